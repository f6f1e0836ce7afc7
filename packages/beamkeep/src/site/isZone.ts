/** Whether the runtime knows a time zone. */
export function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch (e) {
    if (e instanceof RangeError) return false;
    throw e;
  }
}
