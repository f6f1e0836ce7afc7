import { useSignal } from '@preact/signals';
import { sheet } from '../state/store.js';

/** The way through the demo in five steps; each names the cell it speaks of. */
const steps: readonly (readonly [cell: string, words: string])[] = [
  [
    'log',
    'This is an invented tram depot with four beams and two complaints: it faults on sunny mornings, and it alarmed at twenty to seven on Tuesdays. The first cell tells what the log holds.',
  ],
  [
    'signal',
    'Each lane is one beam; its bars name what was found. Draw across a lane with the pointer to zoom in, click a bar to choose it. B3 passes its alarm line twice: choose the bar there.',
  ],
  [
    'why',
    'Ask about a time, or click a place in the plots. Here Tuesdays at twenty to seven are asked about: read what keeps to that hour, what it is, and what cannot be told from smoke.',
  ],
  [
    'findings',
    'All that was found: how sure it is, on what evidence, what to do, and what would settle it. Below stands what each beam has left before dirt, aim and heat use up its margin, and until when.',
  ],
  [
    'log',
    'Your turn: drop your own log and its site file on the first cell. Without a site file it asks what the columns are. Nothing leaves this machine.',
  ],
];

const place = 'beamkeep-guide';

/** A short way through the sheet for the first visit. */
export function Guide() {
  const step = useSignal(skipped() ? steps.length : 0);
  const demo = sheet.value.cells.some((cell) => cell.kind === 'log' && cell.settings.log.from === 'demo');
  const now = steps[step.value];
  if (!demo || !now) return null;
  const [, words] = now;

  function go(to: number): void {
    step.value = to;
    const cell = steps[to]?.[0];
    if (cell === undefined) skip();
    else document.querySelector(`.cell-${cell}`)?.scrollIntoView({ block: 'start' });
  }

  return (
    <aside class="guide" data-screen aria-label="First steps">
      <p aria-live="polite">
        <b>
          {step.value + 1} of {steps.length}
        </b>{' '}
        {words}
      </p>
      <div class="buttons">
        {step.value > 0 && (
          <button type="button" onClick={() => go(step.value - 1)}>
            Back
          </button>
        )}
        <button type="button" onClick={() => go(step.value + 1)}>
          {step.value + 1 < steps.length ? 'Next' : 'Done'}
        </button>
        <button type="button" class="plain" onClick={() => go(steps.length)}>
          skip
        </button>
      </div>
    </aside>
  );
}

function skipped(): boolean {
  try {
    return localStorage.getItem(place) !== null;
  } catch {
    return false;
  }
}

function skip(): void {
  try {
    localStorage.setItem(place, 'seen');
  } catch {
    // Without storage the steps come again at the next visit.
  }
}
