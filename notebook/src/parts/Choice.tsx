import { useId } from 'preact/hooks';

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly options: readonly (readonly [value: T, label: string])[];
  readonly value: T;
  readonly onChange: (value: T) => void;
}

/** One of a few, side by side. */
export function Choice<T extends string>({ legend, options, value, onChange }: ChoiceProps<T>) {
  const name = useId();
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      <div class="choice-options">
        {options.map(([option, label]) => (
          <label key={option}>
            <input type="radio" name={name} checked={option === value} onChange={() => onChange(option)} />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
