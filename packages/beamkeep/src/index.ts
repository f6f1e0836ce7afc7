export { UsageError } from './columns/index.js';
