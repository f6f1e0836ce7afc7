export { type ClockChange, clockChanges } from './clockChanges.js';
export { type ClockStretch, clockStretch } from './clockStretch.js';
export { zoneOffset } from './zoneOffset.js';
