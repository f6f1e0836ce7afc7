import type { deflectionLimits, thermalExpansion } from 'beamkeep/numbers';
import type { TypedStructure } from '../../sheet/sheet.js';
import { type StructureField, structureTyped } from './structureTyped.js';

/** Words of the fields, in the order in which they are asked. */
const asked: readonly (readonly [StructureField, string])[] = [
  ['span', 'Span of the roof member [m]'],
  ['depth', 'Its depth [m]'],
  ['gradient', 'One face warmer by [K]'],
  ['frame', 'Height of the frame [m]'],
  ['member', 'Member that pushes one end sideways [m]'],
  ['warming', 'It warms by [K]'],
];

const roofs: Readonly<Record<keyof typeof deflectionLimits, string>> = {
  roofNoCeiling: 'roof without a ceiling, span/180',
  roofOtherCeiling: 'roof with a ceiling, span/240',
  roofPlasterCeiling: 'roof with a plaster ceiling, span/360',
  metalSecondary: 'secondary member of metal roofing, span/150',
  floor: 'floor, span/360',
};

const materials: Readonly<Record<keyof typeof thermalExpansion, string>> = {
  steel: 'steel',
  concrete: 'concrete',
  aluminium: 'aluminium',
  stainlessSteel: 'stainless steel',
  timberAlongGrain: 'timber along the grain',
  timberAcrossGrain: 'timber across the grain',
};

/** What holds the head, so that the margin can be set against what the structure may do. */
export function StructureForm({
  typed,
  onType,
}: {
  typed: TypedStructure;
  onType: (to: Partial<TypedStructure>) => void;
}) {
  const { refused } = structureTyped(typed);
  const known = asked.some(([field]) => typed[field] !== '');
  return (
    <>
      <details open={known} data-screen>
        <summary>What holds the head, and how far it may move</summary>
        <div class="settings">
          {asked.map(([field, words]) => (
            <label class="field" key={field}>
              <span>{words}</span>
              <input
                inputMode="decimal"
                size={6}
                value={typed[field]}
                aria-invalid={refused.includes(field)}
                onInput={(event) => onType({ [field]: event.currentTarget.value })}
              />
            </label>
          ))}
          <Pick words="Limit of its deflection" of={roofs} value={typed.roof} onPick={(roof) => onType({ roof })} />
          <Pick words="Material" of={materials} value={typed.material} onPick={(material) => onType({ material })} />
        </div>
        <p class="key">What is left empty is not computed. The limits are what a code lets a building do at most.</p>
      </details>
      {refused.length > 0 && (
        <p class="trouble">
          No number above 0, and left out:{' '}
          {asked
            .filter(([field]) => refused.includes(field))
            .map(([, words]) => words)
            .join('; ')}
          .
        </p>
      )}
    </>
  );
}

function Pick<T extends string>({
  words,
  of,
  value,
  onPick,
}: {
  words: string;
  of: Readonly<Record<T, string>>;
  value: T;
  onPick: (value: T) => void;
}) {
  return (
    <label class="field">
      <span>{words}</span>
      <select value={value} onChange={(event) => onPick(event.currentTarget.value as T)}>
        {Object.entries<string>(of).map(([word, label]) => (
          <option key={word} value={word}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}
