import { useLayoutEffect, useRef } from 'preact/hooks';
import { WrittenField, type WrittenKind } from './WrittenField.js';

/** A column of a small table that is typed in. */
export interface RowField<K extends string> {
  readonly key: K;
  readonly label: string;
  readonly kind?: WrittenKind;
}

interface RowsProps<K extends string> {
  readonly legend: string;
  /** What one row is: "person". */
  readonly one: string;
  readonly fields: readonly RowField<K>[];
  readonly rows: readonly Readonly<Record<K, string>>[];
  /**
   * @param rows the rows after the change
   * @param typed which field was typed in; undefined where a row was added or taken out
   */
  readonly onChange: (rows: readonly Readonly<Record<K, string>>[], typed?: string) => void;
}

/** A small table that a person fills in, row by row, with keys alone where wanted. */
export function Rows<K extends string>({ legend, one, fields, rows, onChange }: RowsProps<K>) {
  const box = useRef<HTMLFieldSetElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const added = useRef(false);
  // Before the page is drawn: what is typed right after the key that added a row goes into it.
  useLayoutEffect(() => {
    if (!added.current) return;
    added.current = false;
    box.current?.querySelector<HTMLInputElement>('.row:last-of-type input')?.focus();
  }, [rows.length]);
  const fresh = Object.fromEntries(fields.map(({ key }) => [key, ''])) as Record<K, string>;
  return (
    <fieldset class="rows" ref={box}>
      <legend>{legend}</legend>
      {rows.map((row, at) => (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset within the fieldset would say the same twice.
        <div class="row" role="group" aria-label={`${one} ${at + 1}`} key={at}>
          {fields.map(({ key, label, kind = 'text' }) => (
            <WrittenField
              key={key}
              label={label}
              kind={kind}
              value={row[key]}
              onWritten={(value) => onChange(rows.with(at, { ...row, [key]: value }), `${legend} ${at} ${key}`)}
            />
          ))}
          <button
            type="button"
            class="plain"
            onClick={() => {
              onChange(rows.toSpliced(at, 1));
              button.current?.focus();
            }}
          >
            take out
            <span class="unseen">
              {' '}
              {one} {at + 1}
            </span>
          </button>
        </div>
      ))}
      <button
        type="button"
        ref={button}
        onClick={() => {
          added.current = true;
          onChange([...rows, fresh]);
        }}
      >
        Add a {one}
      </button>
    </fieldset>
  );
}
