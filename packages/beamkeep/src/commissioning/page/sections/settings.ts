import type { BeamOut } from '../../record/commissioningRecord.js';
import { figure } from '../../words/figure.js';
import type { Footnotes } from '../footnotes.js';
import { type Content, html, type Markup } from '../markup.js';
import { amount, facts, list, missing, table } from '../parts.js';

const compensationWords = (compensation: BeamOut['settings']['compensation']): string =>
  typeof compensation === 'object' ? `ends at ${figure(compensation.limitDecibels)} dB` : compensation;

const here = ({ found, unit }: BeamOut['thresholds']['limits'][number]): Content =>
  found === null ? missing('not given') : `${figure(found)} ${unit}`;

/** Settings of a beam, and what its thresholds mean. */
export function settingsSection({ settings, thresholds }: BeamOut, notes: Footnotes): Markup {
  const { alarm, fault, compensationBound, dirt, limits } = thresholds;
  const set = (value: Content) => notes.number(value, 'setting');
  const given = (value: number | null, unit: string) =>
    value === null ? missing() : set(`${figure(value, 6)} ${unit}`);
  const unit = (name: keyof typeof alarm.units, sign: string): Content[] => [
    sign,
    notes.number(amount(alarm.units[name]), 'units'),
    notes.number(amount(fault.units[name]), 'units'),
  ];
  const kept = limits.filter((line) => line.kept === 'yes').length;
  return html`
<h3>Settings</h3>
${facts([
  ['layout', set(settings.layout)],
  ['separation', given(settings.separation, 'm')],
  ['optical path', notes.number(amount(alarm.path, 'm'), 'path')],
  ['height above the floor', given(settings.height, 'm')],
  ['bearing, tilt', [given(settings.bearing, 'deg'), ', ', given(settings.tilt, 'deg')]],
  ['wavelength', given(settings.wavelength, 'nm')],
  ['alarm threshold, delay', [given(settings.alarmThreshold, '%'), ', ', given(settings.alarmDelay, 's')]],
  ['fault threshold, delay', [given(settings.faultThreshold, '%'), ', ', given(settings.faultDelay, 's')]],
  ['alarm stays until reset', set(settings.latching ? 'yes' : 'no')],
  ['clean-air reading', given(settings.cleanAir, settings.signalUnit)],
  ['covered reading', given(settings.covered, settings.signalUnit)],
  ['covered reading taken off', set(settings.coveredSubtracted ? 'yes' : 'no')],
  ['compensation', set(compensationWords(settings.compensation))],
  ['half-angle by the site file', given(settings.halfAngle, 'deg')],
])}
${settings.assumed.length > 0 && html`<p>Assumed, not given: ${settings.assumed.join('; ')}.</p>`}
<h3>What the thresholds mean</h3>
${table(
  ['unit', `alarm ${figure(alarm.percent)} %`, `fault ${figure(fault.percent)} %`],
  [
    unit('decibels', 'dB of the whole path'),
    unit('decibels-per-metre', 'dB/m of smoke'),
    unit('percent-per-foot', '%/ft of smoke'),
    unit('optical-density-per-metre', 'optical density per metre'),
    [
      'a reflecting sign can just be read at',
      notes.number(amount(alarm.smoke.reflectingSignMetres, 'm'), 'visibility'),
      notes.number(amount(fault.smoke.reflectingSignMetres, 'm'), 'visibility'),
    ],
  ],
)}
<p>Dirt moves the alarm threshold: with ${dirt
    .filter(({ dirt: taken }) => taken === 10 || taken === 20)
    .map(({ dirt: taken, smoke }, at) => [
      at > 0 ? ', with ' : '',
      `${figure(taken)} % of dirt `,
      notes.number(`${figure(smoke)} %`, 'dirt'),
      ' of smoke alarms',
    ])}. Compensation may raise it to
${notes.number(`${figure(compensationBound.percent)} %`, 'compensation')} at most.</p>
<p>Of ${limits.length} limits of standards ${kept} are kept, ${limits.filter((line) => line.kept === 'no').length} are not, the others
cannot be compared:</p>
${list(
  limits
    .filter((line) => line.kept !== 'yes')
    .map(
      (line) =>
        html`${line.kept === 'no' ? html`<b>not kept</b>` : 'not known'}: ${line.asks}${
          line.limit !== null && [` ${figure(line.limit)} ${line.unit}`, '; here ', here(line)]
        } <span class="lead">(${line.source}; ${line.seen})</span>`,
    ),
)}
`;
}
