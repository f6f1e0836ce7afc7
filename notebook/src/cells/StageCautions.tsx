import type { Stage } from 'beamkeep/commissioning';
import { helper } from '../state/helper.js';
import { useAnswer } from './useAnswer.js';
import { useKept } from './useKept.js';

const heading = 'Before the test, and while it is made';

/** What to mind at a stage of the commissioning day: open until the test has been made, at hand afterwards; always on paper. */
export function StageCautions({ stage, made }: { stage: Stage; made: boolean }) {
  const told = useKept(useAnswer(() => helper().cautions(stage), [stage]));
  if (told.is !== 'told') return null;
  const list = (
    <ul>
      {told.told.map(({ words }) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
  return (
    <>
      <details class="minded minded-first" open={!made} data-screen>
        <summary>{heading}</summary>
        {list}
      </details>
      <div class="on-paper">
        <div class="minded minded-first">
          <h3>{heading}</h3>
          {list}
        </div>
      </div>
    </>
  );
}
