import type { Figure, Score } from '../../../../tests/evaluation/score.js';

const told = ({ value, n, limits: [low, high] }: Figure, digits = 3): string =>
  Number.isNaN(value) ? '-' : `${value.toFixed(digits)} (${low.toFixed(digits)} to ${high.toFixed(digits)}, n ${n})`;

/** The figures of plain and weighed scores side by side, as tables of a page. */
export function figuresText(plain: Score, weighed: Score, held: string): string {
  const row = (name: string, of: (score: Score) => Figure): string =>
    `| ${name} | ${told(of(plain))} | ${told(of(weighed))} |`;
  const causes = plain.causes.map(({ cause, f1 }, k) => {
    const after = weighed.causes[k];
    return `| \`${cause}\` | ${told(f1, 2)} | ${after === undefined ? '-' : told(after.f1, 2)} |`;
  });
  const bins = weighed.reliability.map(
    ({ confidence, right, n }) => `| ${confidence.toFixed(2)} | ${right.toFixed(2)} | ${n} |`,
  );
  return `Measured on ${held}: ${plain.logs} logs, ${plain.beams} beams, ${plain.beamYears.toFixed(1)} beam-years, ${plain.labelledEvents} labelled events.

| figure (95 % interval) | plain scores | weighed |
|---|---|---|
${row('expected calibration error', (s) => s.calibrationError)}
${row('the same without smoke-like', (s) => s.calibrationErrorWithoutSmoke)}
${row('presence macro-F1', (s) => s.macroF1)}
${row('localisation', (s) => s.localisation)}
${row('smoke episodes found', (s) => s.smokeRecall)}
${row('false watch or act a beam-year on healthy beams', (s) => s.falseAlerts)}

| F1 of a cause (95 % interval) | plain scores | weighed |
|---|---|---|
${causes.join('\n')}

| weighed confidence | share right | findings |
|---|---|---|
${bins.join('\n')}`;
}
