import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { SmallText } from '../sheet/sheet.js';
import { useDrop } from './useDrop.js';

/** Largest file that is kept word for word in a sheet [bytes]. */
const largest = 1_000_000;

interface FileFieldProps {
  /** What the file is, for its button and its name in messages. */
  readonly what: string;
  readonly file: SmallText | null;
  readonly onFile: (file: SmallText | null) => void;
  /** Endings of such files, as the file dialogue takes them. */
  readonly accept?: string;
}

/** Takes one small file into the sheet, by the file dialogue or by dropping it. */
export function FileField({ what, file, onFile, accept = '.csv,.txt' }: FileFieldProps) {
  const input = useRef<HTMLInputElement>(null);
  const refused = useSignal<string | null>(null);

  async function take(given: File): Promise<void> {
    refused.value = given.size > largest ? `${given.name} is too large (${given.size} bytes): cut out the test.` : null;
    if (refused.value === null) onFile({ name: given.name, text: await given.text() });
  }

  const drop = useDrop(([given]) => {
    if (given) void take(given);
  });
  return (
    <div class={drop.over ? 'file-field drop-over' : 'file-field'} {...drop.listens}>
      <div class="buttons" data-screen>
        <button type="button" onClick={() => input.current?.click()}>
          {file ? `Other ${what}` : `Choose ${what}`}
        </button>
        {file && (
          <button type="button" class="plain" onClick={() => onFile(null)}>
            take it out<span class="unseen">: {what}</span>
          </button>
        )}
        <input
          ref={input}
          class="unseen"
          type="file"
          tabIndex={-1}
          aria-label={what}
          accept={accept}
          onChange={(event) => {
            const [given] = event.currentTarget.files ?? [];
            event.currentTarget.value = '';
            if (given) void take(given);
          }}
        />
      </div>
      {file && <p class="key">{file.name}</p>}
      {refused.value && (
        <p class="trouble" role="alert">
          {refused.value}
        </p>
      )}
    </div>
  );
}
