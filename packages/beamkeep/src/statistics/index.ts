export { median } from './median.js';
export { mean, standardDeviation } from './moments.js';
export { quantile } from './quantile.js';
export { rollingMedian } from './rollingMedian.js';
export { medianAbsoluteDeviation, normalOverMedianDeviation, robustSpread } from './spread.js';
