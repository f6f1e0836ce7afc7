import { fileName } from '../parts/fileName.js';
import { saveBlob } from '../parts/saveText.js';
import { plotImages } from '../plots/Plot.js';
import { inTurn } from '../plots/plotly.js';
import { sheet } from '../state/store.js';
import { carriedFaces, fontFace } from './typefaces.js';

/*
 * The report is the sheet as it stands, as one file that needs nothing else: the page without its controls, its plots
 * as pictures (SVG), its style sheet inside, light. A policy in its head forbids it everything but that.
 */

/** Hands the sheet to the downloads as one HTML file. */
export async function saveReport(): Promise<void> {
  saveBlob(fileName([sheet.value.title], 'html'), new Blob([await reportHtml()], { type: 'text/html' }));
}

/** The report as HTML. */
export async function reportHtml(): Promise<string> {
  const report = document.implementation.createHTMLDocument(sheet.value.title);
  const { head, body, documentElement } = report;
  body.className = 'report';
  documentElement.lang = 'en';
  documentElement.setAttribute('data-theme', 'light');
  head.prepend(meta(report, { charset: 'utf-8' }));
  head.append(
    meta(report, {
      'http-equiv': 'Content-Security-Policy',
      content: "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:",
    }),
    meta(report, { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
  );
  const style = report.createElement('style');
  style.textContent = await styleText();
  head.append(style);
  const pictures = await plotImages();
  const main = report.createElement('main');
  for (const part of document.querySelectorAll('.head, main > *, footer')) {
    const copy = await inTurn(() => report.importNode(part, true));
    await withPictures(part, copy, pictures, report);
    // As on paper, a button that moves the plots is its text.
    for (const button of copy.querySelectorAll('button.plain:not([data-screen])'))
      button.replaceWith(...button.childNodes);
    const controls = '[data-screen], h1 input, button, .settings, details:not([open])';
    for (const control of copy.querySelectorAll(controls)) control.remove();
    if (copy.matches(controls)) continue;
    const within = part.parentElement?.tagName === 'MAIN';
    if (within && !main.isConnected) body.append(main);
    (within ? main : body).append(copy);
  }
  return `<!doctype html>\n${documentElement.outerHTML}`;
}

function meta(report: Document, attributes: Readonly<Record<string, string>>): HTMLMetaElement {
  const element = report.createElement('meta');
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}

/** Puts the pictures in place of the plots, as drawings that use the typefaces of the report; the page answers between. */
async function withPictures(
  part: Element,
  copy: Element,
  pictures: ReadonlyMap<Element, string>,
  report: Document,
): Promise<void> {
  const plots = [...part.querySelectorAll('.plot')];
  for (const [row, plot] of [...copy.querySelectorAll('.plot')].entries()) {
    const original = plots[row];
    const picture = original && pictures.get(original);
    if (!picture) continue;
    await inTurn(() => undefined);
    const drawing = new DOMParser().parseFromString(picture, 'image/svg+xml').documentElement;
    const { width, height } = { width: drawing.getAttribute('width'), height: drawing.getAttribute('height') };
    drawing.setAttribute('viewBox', `0 0 ${width} ${height}`);
    drawing.removeAttribute('width');
    drawing.removeAttribute('height');
    plot.replaceChildren(report.importNode(drawing, true));
  }
}

/**
 * The page's style sheets as text, as they were served: what the browser makes of a rule cannot always be written down
 * again. The typefaces come along as data.
 */
async function styleText(): Promise<string> {
  const links = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')];
  const sheets = links.map(async ({ href }) => {
    const text = await (await fetch(href)).text();
    return [...(await carriedFaces(text, href)), text.replace(fontFace, '')].join('\n');
  });
  return (await Promise.all(sheets)).join('\n');
}
