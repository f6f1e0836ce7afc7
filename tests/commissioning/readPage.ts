/* What a reader finds in a piece of the printed record: its texts without their tags. */

const entities: Readonly<Record<string, string>> = {
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
  '&amp;': '&',
};

/** Text of a piece, as it is read: numbers of notes left out. */
export const textOf = (markup: string): string =>
  markup
    .replace(/<sup class="note">.*?<\/sup>/g, '')
    .replace(/<\/?(?:h\d|p|t[dh]|li|d[dt]|text|title)\b[^>]*>/g, ' ')
    .replace(/<[^>]*>/g, '')
    .replace(/&(?:lt|gt|quot|#39|amp);/g, (entity) => entities[entity] as string)
    .replace(/[\s\u00a0]+/g, ' ')
    .trim();

const pieces = (markup: string, tag: string): string[] =>
  [...markup.matchAll(new RegExp(`<${tag}(?: [^>]*)?>(.*?)</${tag}>`, 'gs'))].map(([, inner]) => inner as string);

/** Cells of every row of its tables, the head left out. */
export const cellsOf = (markup: string): string[][] =>
  pieces(markup, 'tbody')
    .flatMap((body) => pieces(body, 'tr'))
    .map((row) => pieces(row, 'td').map(textOf));

/** Names and what belongs to them. */
export const factsOf = (markup: string): Record<string, string> => {
  const [names, values] = [pieces(markup, 'dt'), pieces(markup, 'dd')];
  return Object.fromEntries(names.map((name, at) => [textOf(name), textOf(values[at] ?? '')]));
};

/** Items of its lists. */
export const itemsOf = (markup: string): string[] => pieces(markup, 'li').map(textOf);

/** A sign of a drawing: its attributes, as they are written, and what a text says. */
export interface Sign extends Partial<Record<SignAttribute, string>> {
  readonly says: string;
}
type SignAttribute =
  | `${'' | 'c' | 'r'}${'x' | 'y'}`
  | `${'x' | 'y'}${1 | 2}`
  | 'r'
  | 'd'
  | 'width'
  | 'height'
  | 'fill'
  | 'transform'
  | 'font-size'
  | 'text-anchor'
  | 'stroke-width';

/** Signs of one kind in a drawing. */
export const signsOf = (markup: string, tag: string): Sign[] =>
  [...markup.matchAll(new RegExp(`<${tag} ([^>]*?)/?>([^<]*)`, 'g'))].map(([, attributes = '', says = '']) => ({
    ...Object.fromEntries([...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value])),
    says: textOf(says),
  }));
