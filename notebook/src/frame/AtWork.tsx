import { atWork } from '../state/atWork.js';

/** How far work on the whole sheet has come, and the way to stop it. */
export function AtWork() {
  const now = atWork.value;
  if (!now) return null;
  return (
    <div class="progress at-work" data-screen>
      <label>
        <span aria-live="polite">
          {now.what} … {Math.round(100 * now.share)} %
        </span>
        <progress max={1} value={now.share} />
      </label>
      <button type="button" onClick={now.stop}>
        Stop
      </button>
    </div>
  );
}
