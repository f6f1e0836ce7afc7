import { dataUrl } from '../parts/dataUrl.js';

/*
 * The page's typefaces as rules that carry their file in them, for what leaves the page: reports and pictures. Only the
 * letters of western Europe come along; others are left to the reader's machine.
 */

/** The rules of a style sheet that load a typeface. */
export const fontFace = /@font-face\s*\{[^}]*\}/g;

/** The typefaces of a style sheet, each with its file in it. */
export function carriedFaces(text: string, href: string): Promise<string[]> {
  const faces = text.match(fontFace)?.filter((face) => /unicode-range:\s*U\+(?:\?\?|0+-0*FF)/i.test(face)) ?? [];
  return Promise.all(faces.map((face) => withFile(face, href)));
}

/** A typeface's rule with its file in it. */
async function withFile(face: string, base: string): Promise<string> {
  const [, path = ''] = /url\(["']?([^"')]+)["']?\)/.exec(face) ?? [];
  const file = await fetch(new URL(path, base));
  return face.replace(path, await dataUrl(await file.blob()));
}

let plots: Promise<string> | undefined;

/** The typeface of the plots as rules that need nothing else; fetched from beside the page when first asked for. */
export function plotFaces(): Promise<string> {
  plots ??= Promise.all(
    [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')].map(async ({ href }) =>
      carriedFaces(await (await fetch(href)).text(), href),
    ),
  ).then((sheets) =>
    sheets
      .flat()
      .filter((face) => /Source Sans/.test(face))
      .join('\n'),
  );
  return plots;
}
