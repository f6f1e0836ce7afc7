import type { Site } from '../site/index.js';

/** A column that a site wants from its log: by name, or the only other one beside time. */
export interface WantedColumn {
  readonly name: string | undefined;
  /** Which beam wants it, as messages say it; the first, where several do. */
  readonly by: string;
}

/** The columns that a site wants, each once: the signals first, in order of the beams. */
export function wantedColumns(site: Site): WantedColumn[] {
  const wanted: WantedColumn[] = [];
  const add = (name: string | undefined, by: string) => {
    if (!wanted.some((known) => known.name === name)) wanted.push({ name, by });
  };
  site.beams.forEach((beam, row) => {
    add(beam.signalColumn, `beams[${row}] signalColumn`);
  });
  site.beams.forEach((beam, row) => {
    for (const key of ['temperatureColumn', 'humidityColumn', 'gainColumn', 'plantColumn'] as const) {
      if (beam[key] !== undefined) add(beam[key], `beams[${row}] ${key}`);
    }
  });
  return wanted;
}
