/** Milliseconds in a second. */
export const second = 1000;
/** Milliseconds in a minute. */
export const minute = 60 * second;
/** Milliseconds in an hour. */
export const hour = 60 * minute;
/** Milliseconds in a day of 24 hours. */
export const day = 24 * hour;
