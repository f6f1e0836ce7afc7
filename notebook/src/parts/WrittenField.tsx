/** What is written into a field: a text, a day, or date and time. */
export type WrittenKind = 'text' | 'day' | 'moment';

interface WrittenFieldProps {
  readonly label: string;
  readonly kind?: WrittenKind;
  readonly value: string;
  readonly onWritten: (value: string) => void;
}

/** A field with its label, in which a person writes something down. */
export function WrittenField({ label, kind = 'text', value, onWritten }: WrittenFieldProps) {
  const shared = {
    value,
    onInput: (event: { readonly currentTarget: HTMLInputElement }) => onWritten(event.currentTarget.value),
  };
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the control stands inside, chosen by its kind.
    <label class="field">
      <span>{label}</span>
      {kind === 'text' && <input type="text" {...shared} />}
      {kind === 'day' && <input type="date" {...shared} />}
      {kind === 'moment' && <input type="datetime-local" {...shared} />}
    </label>
  );
}
