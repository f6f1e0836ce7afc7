import { type FleetLine, lineStart } from './fleetLine.js';

/** A line of a fleet's file; undefined for what is none, such as the torn end of a file whose writer was killed. */
export function parseLine(text: string): FleetLine | undefined {
  if (!text.startsWith(lineStart)) return undefined;
  try {
    const line: FleetLine = JSON.parse(text);
    const known = typeof line.log === 'string' && Array.isArray(line.files);
    const diagnosed = line.diagnosis?.beams.every(({ findings }) => Array.isArray(findings)) === true;
    return known && (typeof line.error === 'string' || diagnosed) ? line : undefined;
  } catch {
    return undefined;
  }
}
