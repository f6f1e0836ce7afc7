import { saveText } from '../parts/saveText.js';
import { notice } from '../state/notices.js';

/** What there is to tell about the sheet as a whole. */
export function Notices() {
  const told = notice.value;
  if (!told) return null;
  const { what, rescue } = told;
  return (
    <div class="trouble notice" role="alert" data-screen>
      <p>{what}</p>
      <div class="buttons">
        {rescue && (
          <button type="button" onClick={() => saveText(rescue.name, 'application/json', rescue.text)}>
            Save what was kept
          </button>
        )}
        <button
          type="button"
          onClick={() => {
            notice.value = null;
          }}
        >
          Close
        </button>
      </div>
    </div>
  );
}
