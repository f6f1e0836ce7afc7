import type { Stage } from 'beamkeep/commissioning';
import { helper } from '../state/helper.js';
import { useAnswer } from './useAnswer.js';
import { useKept } from './useKept.js';

/** What to mind at a stage of the commissioning day: open until the test has been made, at hand afterwards. */
export function StageCautions({ stage, made }: { stage: Stage; made: boolean }) {
  const told = useKept(useAnswer(() => helper().cautions(stage), [stage]));
  if (told.is !== 'told') return null;
  return (
    <details class="minded minded-first" open={!made}>
      <summary>Before the test, and while it is made</summary>
      <ul>
        {told.told.map(({ words }) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </details>
  );
}
