import { units } from 'beamkeep/attenuation';
import type { ThresholdsJson } from 'beamkeep/commissioning';
import type { Look } from '../look.js';
import { plainly } from '../plain.js';
import { table } from '../table.js';
import { wrap } from '../wrap.js';
import { cautionsText } from './testCautions.js';
import { told } from './told.js';

type BeamThresholds = ThresholdsJson['beams'][number];

const kept = { yes: 'kept', no: 'NOT KEPT', 'not known': 'not known' } as const;

function unitRows({ alarm, fault }: BeamThresholds): string[][] {
  const amount = (value: number | string | null) =>
    typeof value === 'number' ? String(Number(value.toPrecision(4))) : told(value);
  const smoke = [
    ['a reflecting sign is read at', 'm', 'reflectingSignMetres'],
    ['a light-emitting sign is read at', 'm', 'lightEmittingSignMetres'],
  ] as const;
  return [
    ...units.map((unit) => [unit, amount(alarm.units[unit]), amount(fault.units[unit])]),
    ...smoke.map(([name, unit, key]) => [`${name} [${unit}]`, amount(alarm.smoke[key]), amount(fault.smoke[key])]),
  ];
}

function beamText(beam: BeamThresholds, { width, colours }: Look): string {
  const { id, layout, separation, wavelength, alarm, limits, dirt, table: wall, assumed } = beam;
  const path = layout === 'reflective' ? `reflective: the light crosses ${alarm.path} m of smoke` : 'end to end';
  const limitLines = limits.map((line) => {
    const asks = line.limit === null ? line.asks : `${line.asks} ${told(line.limit, line.unit)}`;
    const found = line.found === null ? '' : `; here ${told(line.found, line.unit)}`;
    return wrap(`${kept[line.kept]}: ${asks}${found}. ${line.source} (${line.seen})`, width, '  ', '    ');
  });
  return [
    `${colours.strong(`Beam ${id}`)}  ${separation} m, ${path}; ${wavelength} nm`,
    table(
      [['', `alarm ${alarm.percent} %`, `fault ${beam.fault.percent} %`].map(colours.faint), ...unitRows(beam)],
      '  ',
    ),
    `What standards ask, as read or remembered\n${limitLines.join('\n')}`,
    `Dirt moves the threshold: with so much dirt, so much smoke alarms\n${table(
      [
        ['dirt', ...dirt.map((shift) => `${shift.dirt} %`)],
        [
          'smoke',
          ...dirt.map(({ smoke, ends }) =>
            ends === 'alarm' ? 'none' : `${told(smoke, '%')}${ends === 'fault' ? ' (fault)' : ''}`,
          ),
        ],
      ],
      '  ',
    )}`,
    `Thresholds against separation, dB/m and %/ft of smoke\n${table(
      [
        ['m', ...wall.thresholds.map((threshold) => `${threshold} %`)].map(colours.faint),
        ...wall.rows.map(({ separation: metres, cells }) => [
          String(metres),
          ...cells.map(
            ({ units: of }) => `${told(of['decibels-per-metre'])} dB/m  ${told(of['percent-per-foot'])} %/ft`,
          ),
        ]),
      ],
      '  ',
    )}`,
    ...(assumed.length === 0 ? [] : [wrap(`Assumed: ${assumed.join('; ')}.`, width, '  ', '    ')]),
  ].join('\n\n');
}

/** Thresholds for people. */
export const thresholdsText = (answer: ThresholdsJson, look: Look): string =>
  `${[...plainly(answer).beams.map((beam) => beamText(beam, look)), cautionsText('thresholds', look.width)].join('\n\n')}\n`;
