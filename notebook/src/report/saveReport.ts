import { saveBlob } from '../parts/saveText.js';
import { plotImages } from '../plots/Plot.js';
import { sheet } from '../state/store.js';

/*
 * The report is the sheet as it stands, as one file that needs nothing else: the page without its controls, its plots
 * as pictures (SVG), its style sheet inside, light. A policy in its head forbids it everything but that.
 */

/** Hands the sheet to the downloads as one HTML file. */
export async function saveReport(): Promise<void> {
  saveBlob(`${sheet.value.title || 'worksheet'}.html`, new Blob([await reportHtml()], { type: 'text/html' }));
}

/** The report as HTML. */
export async function reportHtml(): Promise<string> {
  const report = document.implementation.createHTMLDocument(sheet.value.title);
  const { head, body, documentElement } = report;
  documentElement.lang = 'en';
  documentElement.setAttribute('data-theme', 'light');
  head.prepend(meta(report, { charset: 'utf-8' }));
  head.append(
    meta(report, {
      'http-equiv': 'Content-Security-Policy',
      content: "default-src 'none'; style-src 'unsafe-inline'; img-src data:",
    }),
    meta(report, { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
  );
  const style = report.createElement('style');
  style.textContent = styleText();
  head.append(style);
  const pictures = await plotImages();
  for (const part of document.querySelectorAll('.head, main, footer')) {
    const copy = report.importNode(part, true);
    withPictures(part, copy, pictures, report);
    for (const field of copy.querySelectorAll('h1 input')) field.replaceWith((field as HTMLInputElement).value);
    for (const control of copy.querySelectorAll('[data-screen], button, .settings, details:not([open])'))
      control.remove();
    body.append(copy);
  }
  return `<!doctype html>\n${documentElement.outerHTML}`;
}

function meta(report: Document, attributes: Readonly<Record<string, string>>): HTMLMetaElement {
  const element = report.createElement('meta');
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}

/** Puts the pictures in place of the plots. */
function withPictures(part: Element, copy: Element, pictures: ReadonlyMap<Element, string>, report: Document): void {
  const plots = [...part.querySelectorAll('.plot')];
  for (const [row, plot] of [...copy.querySelectorAll('.plot')].entries()) {
    const original = plots[row];
    const image = report.createElement('img');
    image.src = (original && pictures.get(original)) ?? '';
    image.alt = plot.getAttribute('aria-label') ?? '';
    plot.replaceWith(image);
  }
}

/** The rules of the page's own style sheets; typefaces stay behind, for they are files. */
function styleText(): string {
  return [...document.styleSheets]
    .flatMap((sheet) => [...sheet.cssRules])
    .filter((rule) => !(rule instanceof CSSFontFaceRule))
    .map((rule) => rule.cssText)
    .join('\n');
}
