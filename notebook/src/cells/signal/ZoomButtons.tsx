import type { Reading, Window } from '../../bench/reading.js';
import type { Desk } from '../../state/desk.js';
import { siteDates } from '../../words/dates.js';
import { lengthInWords } from '../../words/numbers.js';
import { moveWindow } from './moveWindow.js';

const buttons: readonly (readonly [key: string, sign: string, name: string])[] = [
  ['ArrowLeft', '←', 'Earlier'],
  ['ArrowRight', '→', 'Later'],
  ['+', '+', 'Zoom in'],
  ['-', '−', 'Zoom out'],
  ['0', 'whole', 'Whole log'],
  ['p', '‹ finding', 'Previous finding'],
  ['n', 'finding ›', 'Next finding'],
];

/** Moves through the log without a pointer, and says where one is. */
export function ZoomButtons({ desk, reading, window }: { desk: Desk; reading: Reading; window: Window }) {
  const dates = siteDates(reading.site.timeZone);
  return (
    <div class="zoom">
      <div class="buttons" data-screen>
        {buttons.map(([key, sign, name]) => (
          <button
            key={key}
            type="button"
            aria-label={name}
            title={`${name} (key ${key.replace('Arrow', '').toLowerCase()})`}
            onClick={() => moveWindow(key, desk, reading)}
          >
            {sign}
          </button>
        ))}
      </div>
      <p class="where" aria-live="polite">
        {dates.stretch(window.from, window.to)} ({lengthInWords(window.to - window.from)})
      </p>
    </div>
  );
}
