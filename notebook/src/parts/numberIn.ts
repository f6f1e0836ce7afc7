/** A number as people write it, with a point or a comma; NaN when it is none. */
export const numberIn = (text: string): number =>
  text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.'));
