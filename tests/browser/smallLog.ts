/*
 * A small invented log, made by rule and without chance: two beams, a minute a sample, ten days. `north` loses a third
 * at once on the fourth day and keeps it, `south` is as it should be.
 */

const start = Date.UTC(2027, 5, 1);
const minutes = 10 * 1440;

/** The log as CSV. */
export function smallLog(names: readonly [string, string] = ['north', 'south']): string {
  const lines = [`time,${names.map(quoted).join(',')}`];
  for (let i = 0; i < minutes; i++) {
    const dither = ((i * 7919) % 13) / 20 - 0.3;
    const north = (i < 3.4 * 1440 ? 99 : 70) + dither;
    const south = 99 + (((i * 104_729) % 11) / 20 - 0.25);
    lines.push(`${new Date(start + i * 60_000).toISOString()},${north.toFixed(2)},${south.toFixed(2)}`);
  }
  return `${lines.join('\n')}\n`;
}

const quoted = (name: string): string => (/[",\n]/.test(name) ? `"${name.replace(/"/g, '""')}"` : name);

/** Its site file. */
export function smallSite(names: readonly [string, string] = ['north', 'south'], siteName = 'Test hall'): string {
  return JSON.stringify({
    format: 'beamkeep-site/1',
    name: siteName,
    timeZone: 'Asia/Kathmandu',
    beams: names.map((name) => ({ id: name, layout: 'reflective', separation: 40, signalColumn: name })),
  });
}
