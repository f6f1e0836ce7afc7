// What a diagnosis says of the invented log, beside what was put into it.
//
//   node truth.mjs LOG SITE TRUTH
//
// Steps and cleanings are read off the findings, to the sample. The cycle and the kelvin are read off the condensed
// records: a joint robust fit of level, dirt, two harmonics of the day and the roof's temperature, free to jump where
// the findings say that it jumped. One line of JSON.

import { readFileSync } from 'node:fs';
import { diagnose } from '../../packages/beamkeep/dist/index.js';
import { logFiles, siteFile } from '../../packages/beamkeep/dist/node.js';
import { harmonicColumns, median, robustLeastSquares } from '../../packages/beamkeep/dist/statistics/index.js';

const [log, siteName, truthName] = process.argv.slice(2);
const truth = JSON.parse(readFileSync(truthName, 'utf8'));
const { diagnosis, records } = await diagnose(await logFiles([log]), await siteFile(siteName));
const day = 86_400_000;

const [b1, b2, ...rest] = diagnosis.beams;
const starts = ({ findings }, cause) => findings.filter((f) => f.cause === cause).map((f) => Date.parse(f.start));
const sampleMs = 1000 * records[0].intervalSeconds;
/** Samples between what was said and what was so: 0 is the first sample after it. */
const samplesOff = (said, so) => Math.floor((said - Date.parse(so)) / sampleMs);

/** Hourly medians of a beam's level and of its temperature. */
function hourly({ trace, temperature }) {
  const of = (time, value) => {
    const hours = new Map();
    for (let i = 0; i < time.length; i++) {
      const hour = Math.floor(time[i] / 3_600_000);
      if (!hours.has(hour)) hours.set(hour, []);
      hours.get(hour).push(value[i]);
    }
    return new Map([...hours].map(([hour, values]) => [hour, median(values)]));
  };
  const roof = of(temperature.time, temperature.value);
  const level = [...of(trace.time, trace.level)].filter(([hour]) => roof.has(hour));
  return {
    time: Float64Array.from(level, ([hour]) => (hour + 0.5) * 3_600_000),
    level: Float64Array.from(level, ([, value]) => 100 * value),
    roof: Float64Array.from(level, ([hour]) => roof.get(hour)),
  };
}

/** Amplitudes of the day's first two harmonics [%] and what a kelvin does [%/K]. */
function fitted(record, jumps) {
  const { time, level, roof } = hourly(record);
  const column = (value) => Float64Array.from(time, value);
  const columns = [
    ...harmonicColumns(time, day, 2),
    roof,
    column(() => 1),
    column((t) => (t - time[0]) / day),
    ...jumps.map((at) => column((t) => (t >= at ? 1 : 0))),
  ];
  const { coefficients: c } = robustLeastSquares(columns, level);
  // An hour's median of a swing is a little flatter than the swing itself.
  const flattened = (order) => Math.sin((Math.PI * order) / 24) / ((Math.PI * order) / 24);
  return {
    cycle24: Math.hypot(c[0], c[1]) / flattened(1),
    cycle12: Math.hypot(c[2], c[3]) / flattened(2),
    perKelvin: c[4],
  };
}

const steps = starts(b2, 'misalignment-step');
const cleaned = starts(b1, 'cleaned');
const beam1 = fitted(records[0], cleaned);
const beam2 = fitted(records[1], steps);
/** Off by [%] of what was put in. */
const off = (said, so) => 100 * (said / so - 1);
console.log(
  JSON.stringify({
    intervalSeconds: records[0].intervalSeconds,
    knock: steps.map((at) => samplesOff(at, truth.b2.stepAt)),
    cleaning: cleaned.map((at) => samplesOff(at, truth.b1.cleanedAt)),
    falseSteps: [b1, ...rest].flatMap((beam) => starts(beam, 'misalignment-step')).length,
    falseCleanings: [b2, ...rest].flatMap((beam) => starts(beam, 'cleaned')).length,
    cycle24: off(beam2.cycle24, truth.b2.cycle24),
    cycle12: off(beam2.cycle12, truth.b2.cycle12),
    // As make-log.mjs has it: 0.02 and 0.03 % less a kelvin.
    perKelvin: [off(beam1.perKelvin, -0.02), off(beam2.perKelvin, -0.03)],
  }),
);
