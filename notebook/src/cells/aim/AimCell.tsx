import type { AimJson } from 'beamkeep/commissioning';
import type { Site } from 'beamkeep/site';
import { useCallback } from 'preact/hooks';
import { Asked } from '../../parts/Asked.js';
import { FileField } from '../../parts/FileField.js';
import { Scroll } from '../../parts/Scroll.js';
import { Verdict } from '../../parts/Verdict.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { scanFigure, scanHeight } from '../../plots/scanFigure.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings } from '../../sheet/sheet.js';
import { helper } from '../../state/helper.js';
import { edit } from '../../state/store.js';
import { figure } from '../../words/numbers.js';
import { BeamChoice } from '../BeamChoice.js';
import { chosenBeam } from '../chosenBeam.js';
import { NeedsSite } from '../NeedsSite.js';
import { StageCautions } from '../StageCautions.js';
import { useAnswer } from '../useAnswer.js';
import { useKept } from '../useKept.js';
import { placesLeft } from './placesLeft.js';
import { StructureForm } from './StructureForm.js';
import { structureTyped } from './structureTyped.js';

/** Is the head on the peak of its lobe, on the flank, or on a stray reflection? */
export function AimCell({ cell }: { cell: Cell<'aim'> }) {
  return <NeedsSite cell={cell.id}>{(site) => <Aim cell={cell} site={site} />}</NeedsSite>;
}

function Aim({ cell, site }: { cell: Cell<'aim'>; site: Site }) {
  const { scan, left, structure: typed } = cell.settings;
  const change = (to: Partial<Settings['aim']>): void => edit((sheet) => set(sheet, cell, to), `${cell.id} aim`);
  const beam = chosenBeam(site, cell.settings.beam);
  const places = placesLeft(left);
  const where = places.join(' ');
  const { structure } = structureTyped(typed);
  const answer = useKept(
    useAnswer(scan ? () => helper().aim(scan, site, beam, places, structure) : null, [site, scan, beam, where, typed]),
  );
  return (
    <>
      <div class="settings">
        <BeamChoice site={site} beam={beam} onBeam={(id) => change({ beam: id })} />
        <label class="field">
          <span>Where the head was left [degrees], one number an axis</span>
          <input value={left} onInput={(event) => change({ left: event.currentTarget.value })} />
        </label>
        <FileField what="aim scan" file={scan} onFile={(file) => change({ scan: file })} />
      </div>
      <StructureForm typed={typed} onType={(to) => change({ structure: { ...typed, ...to } })} />
      <Asked of={[['Aim scan', scan?.name ?? '']]} />
      <StageCautions stage="aim" made={scan !== null} />
      {answer.is === 'nothing' && (
        <p class="empty">
          Choose an aim scan: a CSV with one or two columns of angles and one of the received level, a line a reading.
        </p>
      )}
      {answer.is === 'asking' && <p class="empty">Looking at the scan …</p>}
      {answer.is === 'refused' && <p class="trouble">{answer.why}</p>}
      {answer.is === 'told' && <Told aim={answer.told} site={site.name} />}
    </>
  );
}

function Told({ aim, site }: { aim: AimJson; site: string }) {
  const draw = useCallback((width: number, colours: Palette) => scanFigure(aim, width, colours), [aim]);
  return (
    <>
      <Verdict beam={aim.beam} verdict={aim.verdict} sentences={aim.sentences} actions={aim.actions} />
      <Plot
        figure={draw}
        height={scanHeight}
        name={[site, 'aim scan', aim.beam]}
        label={`Aim scan of beam ${aim.beam}. ${aim.sentences.join(' ')}`}
      />
      {aim.movement.length > 0 && (
        <Scroll label={`Movement of the structure of beam ${aim.beam}`}>
          <table>
            <caption>What the structure may do, against the margin before the alarm</caption>
            <thead>
              <tr>
                <th scope="col">what</th>
                <th scope="col">turn</th>
                <th scope="col">moves</th>
                <th scope="col">of the margin</th>
                <th scope="col">source</th>
              </tr>
            </thead>
            <tbody>
              {aim.movement.map(({ what, degrees, millimetres, share, source, seen }) => (
                <tr key={what}>
                  <th scope="row">{what}</th>
                  <td>{figure(degrees)}°</td>
                  <td>{`${figure(millimetres)}\u00a0mm`}</td>
                  <td>{typeof share === 'number' ? `${figure(100 * share)} %` : 'no margin is left'}</td>
                  <td class="quiet">
                    {source} ({seen})
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      )}
    </>
  );
}
