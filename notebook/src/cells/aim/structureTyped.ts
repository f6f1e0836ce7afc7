import type { Structure } from 'beamkeep/commissioning';
import { numberIn } from '../../parts/numberIn.js';
import { freshStructure, type TypedStructure } from '../../sheet/sheet.js';

/** The fields that hold a number, and where the library takes it. */
const numbers = {
  span: 'spanMetres',
  depth: 'depthMetres',
  gradient: 'gradientKelvin',
  frame: 'heightMetres',
  member: 'lengthMetres',
  warming: 'warmingKelvin',
} as const satisfies Partial<Record<keyof TypedStructure, keyof Structure>>;

/** A field of what holds the head that takes a number. */
export type StructureField = keyof typeof numbers;

const fields = Object.keys(numbers) as StructureField[];

/**
 * What holds a head, from what was typed: points or commas, empty where nothing is known.
 *
 * @returns the structure, and the fields that hold something else than a number above 0: they are left out
 * @example structureTyped({ ...freshStructure, span: '18,5' }).structure.spanMetres // 18.5
 */
export function structureTyped(typed: TypedStructure): { structure: Structure; refused: StructureField[] } {
  const given = fields.filter((field) => typed[field].trim() !== '');
  const usable = given.filter(
    (field) => numberIn(typed[field]) > 0 && numberIn(typed[field]) < Number.POSITIVE_INFINITY,
  );
  return {
    structure: {
      roof: typed.roof,
      material: typed.material,
      ...Object.fromEntries(usable.map((field) => [numbers[field], numberIn(typed[field])])),
    },
    refused: given.filter((field) => !usable.includes(field)),
  };
}

/** What holds a head as its fields show it, from a day file. */
export const typedOf = ({ roof, material, ...known }: Structure = {}): TypedStructure => ({
  ...freshStructure,
  ...Object.fromEntries(fields.map((field) => [field, known[numbers[field]]?.toString() ?? ''])),
  ...(roof && { roof }),
  ...(material && { material }),
});
