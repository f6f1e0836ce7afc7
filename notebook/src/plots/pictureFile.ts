import { fileName } from '../parts/fileName.js';
import { saveBlob } from '../parts/saveText.js';
import { plotFaces } from '../report/typefaces.js';
import { palette } from './palette.js';

/*
 * One picture as a file: SVG for print and drawing programs, PNG for everything else. Always light and on paper,
 * whatever the theme of the page, and with nothing in it that loads or runs.
 */

/** In which form a picture is saved. */
export const pictureForms = ['svg', 'png'] as const;
export type PictureForm = (typeof pictureForms)[number];

/** What a picture is called, from the wide to the narrow: the site, the cell, the beam. */
export type PictureName = readonly string[];

/** Pixels of a PNG for every pixel of the page: sharp on paper. */
const fineness = 2;

/** Hands a picture to the browser's downloads. */
export async function savePicture(svg: string, name: PictureName, form: PictureForm): Promise<void> {
  const drawing = onPaper(svg, name);
  const file = fileName(name, form);
  if (form === 'svg') saveBlob(file, new Blob([textOf(drawing)], { type: 'image/svg+xml' }));
  else saveBlob(file, await raster(drawing));
}

/** Room for the name above a picture [px]. */
const head = 30;

const svgSpace = 'http://www.w3.org/2000/svg';

function element<K extends keyof SVGElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string | number>>,
): SVGElementTagNameMap[K] {
  const made = document.createElementNS(svgSpace, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  return made;
}

/** The picture as a document of its own: under its name, on light paper, in the ink of the page. */
function onPaper(svg: string, name: PictureName): SVGSVGElement {
  const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
  const [, , wide = '', high = ''] = drawing.getAttribute('viewBox')?.split(/[\s,]+/) ?? [];
  const width = Number.parseFloat(drawing.getAttribute('width') ?? wide);
  const height = Number.parseFloat(drawing.getAttribute('height') ?? high);
  const { paper, ink } = palette('light');
  const whole = element('svg', {
    width,
    height: height + head,
    viewBox: `0 0 ${width} ${height + head}`,
    color: ink,
    'font-family': '"Source Sans 3 Variable", "Source Sans 3", sans-serif',
  });
  const title = element('text', { x: 12, y: 20, fill: ink, 'font-size': 14, 'font-weight': 600 });
  title.textContent = name.join(', ');
  for (const [key, value] of Object.entries({ y: head, width, height })) drawing.setAttribute(key, String(value));
  whole.append(
    element('rect', { width, height: height + head, fill: paper }),
    title,
    document.importNode(drawing, true),
  );
  return whole;
}

const textOf = (drawing: SVGSVGElement): string => new XMLSerializer().serializeToString(drawing);

/** The picture in pixels. A picture that is drawn by itself has no typefaces but those it carries. */
async function raster(drawing: SVGSVGElement): Promise<Blob> {
  const style = document.createElementNS(svgSpace, 'style');
  style.textContent = await plotFaces();
  drawing.prepend(style);
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([textOf(drawing)], { type: 'image/svg+xml' }));
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = fineness * Number.parseFloat(drawing.getAttribute('width') ?? '');
  canvas.height = fineness * Number.parseFloat(drawing.getAttribute('height') ?? '');
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  URL.revokeObjectURL(image.src);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('this browser made no picture')))),
  );
}
