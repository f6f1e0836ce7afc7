import type { Beam, Site } from 'beamkeep/site';
import { useCallback, useMemo } from 'preact/hooks';
import type { ProofTold } from '../../bench/proofTold.js';
import { siteZone } from '../../bench/siteZone.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { proofFigure, proofHeight } from '../../plots/proofFigure.js';
import { counted, figure } from '../../words/numbers.js';
import { stepName } from './stepName.js';

/** How a proof came out: the verdict in words, and the test with its steps marked. */
export function Judged({ told, beam, site }: { told: ProofTold; beam: Beam; site: Site }) {
  const { proof, verdict } = told;
  const zone = useMemo(() => siteZone(site.timeZone), [site.timeZone]);
  const draw = useCallback(
    (width: number, colours: Palette) => proofFigure(proof, beam, zone, width, colours),
    [proof, beam, zone],
  );
  const { steps, unexplained, panelList, input, assumed } = proof;
  const rowsThat = (wanted: string): string[] =>
    steps.flatMap((step, row) => (step.verdict === wanted ? [`${row + 1} (${stepName(step.expected.do)})`] : []));
  const [passed, failed, open] = [rowsThat('pass'), rowsThat('fail'), rowsThat('not shown')];
  const sentence = [
    `${counted(passed.length)} of ${counted(steps.length)} steps passed`,
    ...(failed.length > 0 ? [`failed: ${failed.join(', ')}`] : []),
    ...(open.length > 0 ? [`not shown by the log: ${open.join(', ')}`] : []),
  ].join('; ');
  const judgedBy = panelList
    ? 'Judged by the received signal and by the panel’s own list.'
    : 'Judged by the received signal alone: without the panel’s own list it is not known what the panel showed.';
  return (
    <>
      <p class="answer">
        Beam {proof.beam}: <b>{verdict}.</b> {sentence}. {judgedBy}
      </p>
      <Plot
        figure={draw}
        height={proofHeight}
        name={[site.name, 'proof', proof.beam]}
        label={`Logged test of beam ${proof.beam}, with its steps marked. ${sentence}. The steps are listed below.`}
      />
      {unexplained.length > 0 && (
        <>
          <p>Losses that belong to no step:</p>
          <ul class="warnings">
            {unexplained.map(({ start, largest }) => (
              <li key={start}>
                {start === null ? 'at a time not shown' : zone.wall(Date.parse(start)).slice(0, 19)}: {figure(largest)}{' '}
                %
              </li>
            ))}
          </ul>
        </>
      )}
      {input.dropped > 0 && (
        <p class="key">
          {counted(input.dropped)} of {counted(input.lines)} lines of the test could not be used.
        </p>
      )}
      {assumed.length > 0 && <p class="key">Assumed: {assumed.join('; ')}.</p>}
    </>
  );
}
