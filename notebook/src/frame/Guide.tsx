import { useSignal } from '@preact/signals';
import { deskOf } from '../state/desk.js';
import { sheet } from '../state/store.js';

/** The way through the demo in five steps; each names the place on the sheet it speaks of. */
const steps: readonly (readonly [place: string, words: string])[] = [
  [
    '.cell-log',
    'This is an invented tram depot with four beams and two complaints: it faults on sunny mornings, and it alarmed at twenty to seven on Tuesdays. This is the log of 120 days. Next: what it shows.',
  ],
  [
    '.cell-signal [data-lane$=" B3"]',
    'Each lane is one beam, and its bars name what was found. Here is B3: a peak every Tuesday, and twice one past the dashed alarm line. Click the bar above such a peak to read what it is; draw across the lane to zoom in.',
  ],
  [
    '.cell-why',
    'Why on Tuesdays at twenty to seven? The answer stands in the first lines; under it what to do, and what would settle it. Ask about another time, or click a place in the plots.',
  ],
  [
    '.cell-findings',
    'All that was found on every beam: how sure it is, on what evidence, what to do. The sunny mornings are on B4, “stray light”. Further down stands what each beam has left before dirt, aim and heat use up its margin, and until when.',
  ],
  [
    '.cell-log',
    'Your turn: drop your own log on this cell, with its site file if there is one. Without, it asks what the columns are. Nothing leaves this machine.',
  ],
];

const kept = 'beamkeep-guide';

/** A short way through the sheet for the first visit. */
export function Guide() {
  const step = useSignal(skipped() ? steps.length : 0);
  const demo = sheet.value.cells.some((cell) => cell.kind === 'log' && cell.settings.log.from === 'demo');
  const now = steps[step.value];
  if (!demo || !now) return null;
  const [, words] = now;

  function go(to: number): void {
    step.value = to;
    const place = steps[to]?.[0];
    if (place === undefined) skip();
    else show(place);
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

/** Brings a place on the sheet into sight; where it is not there, its cell. The question of the demo stands as typed. */
function show(place: string): void {
  if (place === '.cell-why')
    for (const { id, kind } of sheet.value.cells) if (kind === 'log') deskOf(id).asked.value = null;
  const there = document.querySelector(place) ?? document.querySelector(place.split(' ')[0] ?? place);
  there?.scrollIntoView({ block: 'start' });
}

function skipped(): boolean {
  try {
    return localStorage.getItem(kept) !== null;
  } catch {
    return false;
  }
}

function skip(): void {
  try {
    localStorage.setItem(kept, 'seen');
  } catch {
    // Without storage the steps come again at the next visit.
  }
}
