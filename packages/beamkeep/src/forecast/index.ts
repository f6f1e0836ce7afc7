export type { Break } from './dailyLoss.js';
export { type ForecastInput, forecastMargin, type MarginForecast } from './forecastMargin.js';
export { type Margin, margin } from './margin.js';
