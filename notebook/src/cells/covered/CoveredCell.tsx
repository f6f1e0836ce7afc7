import type { CoveredJson } from 'beamkeep/commissioning';
import type { Site } from 'beamkeep/site';
import { useCallback, useMemo } from 'preact/hooks';
import { siteZone } from '../../bench/siteZone.js';
import { Asked } from '../../parts/Asked.js';
import { FileField } from '../../parts/FileField.js';
import { Verdict } from '../../parts/Verdict.js';
import { coveredFigure, coveredHeight } from '../../plots/coveredFigure.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings } from '../../sheet/sheet.js';
import { helper } from '../../state/helper.js';
import { edit } from '../../state/store.js';
import { BeamChoice } from '../BeamChoice.js';
import { chosenBeam } from '../chosenBeam.js';
import { NeedsSite } from '../NeedsSite.js';
import { StageCautions } from '../StageCautions.js';
import { useAnswer } from '../useAnswer.js';

/** What comes back when the reflector is covered? */
export function CoveredCell({ cell }: { cell: Cell<'covered'> }) {
  return <NeedsSite cell={cell.id}>{(site) => <Covered cell={cell} site={site} />}</NeedsSite>;
}

function Covered({ cell, site }: { cell: Cell<'covered'>; site: Site }) {
  const { test } = cell.settings;
  const change = (to: Partial<Settings['covered']>): void => edit((sheet) => set(sheet, cell, to));
  const beam = chosenBeam(site, cell.settings.beam);
  const answer = useAnswer(test ? () => helper().covered(test, site, beam) : null, [site, test, beam]);
  return (
    <>
      <div class="settings">
        <BeamChoice site={site} beam={beam} onBeam={(id) => change({ beam: id })} />
        <FileField what="log of a covered test" file={test} onFile={(file) => change({ test: file })} />
      </div>
      <Asked of={[['Log of the covered test', test?.name ?? '']]} />
      <StageCautions stage="covered" made={test !== null} />
      {answer.is === 'nothing' && (
        <p class="empty">
          Choose the log of a covered test: a minute clean, the whole reflector covered with something dull for half a
          minute, a minute clean again.
        </p>
      )}
      {answer.is === 'asking' && <p class="empty">Looking at the test …</p>}
      {answer.is === 'refused' && <p class="trouble">{answer.why}</p>}
      {answer.is === 'told' && <Told test={answer.told} site={site} />}
    </>
  );
}

function Told({ test, site }: { test: CoveredJson; site: Site }) {
  const { timeZone } = site;
  const zone = useMemo(() => siteZone(timeZone), [timeZone]);
  const draw = useCallback(
    (width: number, colours: Palette) => coveredFigure(test, zone, width, colours),
    [test, zone],
  );
  return (
    <>
      <Verdict beam={test.beam} verdict={test.verdict} sentences={test.sentences} actions={test.actions} />
      <Plot
        figure={draw}
        height={coveredHeight}
        name={[site.name, 'covered test', test.beam]}
        label={`Covered test of beam ${test.beam}. ${test.sentences.join(' ')}`}
      />
    </>
  );
}
