import type { NumberOut } from '../documents/numbersOut.js';
import { figure, printed } from '../words/figure.js';
import { type Content, html, type Markup } from './markup.js';

/* Small parts that every section of the record is made of. */

/** What stands where nothing is known. */
export const missing = (words = 'not given'): Markup => html`<span class="missing">${words}</span>`;

/** A number with its unit; missing where it is not known. */
export function amount(value: NumberOut, unit = ''): Content {
  if (value === null) return missing('not known');
  if (value === 'infinite') return 'never';
  return `${printed(figure(value))}${unit && `\u00a0${unit}`}`; // a number and its unit stay together
}

/** A number with its limits: "0.5 degrees (0.49 to 0.51)". */
export const amountBetween = (
  { value, low, high }: { readonly value: NumberOut; readonly low: NumberOut; readonly high: NumberOut },
  unit = '',
): Content => [amount(value, unit), ' (', amount(low), ' to ', amount(high), ')'];

/** Names and what belongs to them, in two columns. */
export const facts = (rows: readonly (readonly [name: Content, value: Content])[]): Markup =>
  html`<dl class="facts">${rows.map(
    ([name, value]) => html`<div><dt>${name}</dt><dd>${value}</dd></div>
`,
  )}</dl>`;

/** A table with a head. */
export const table = (head: readonly Content[], rows: readonly (readonly Content[])[]): Markup => html`<table>
<thead><tr>${head.map((cell) => html`<th scope="col">${cell}</th>`)}</tr></thead>
<tbody>${rows.map(
  (cells) => html`<tr>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>
`,
)}</tbody></table>`;

/** A list of texts; missing where there is none and something was to be there. */
export const list = (items: readonly Content[], none?: string): Content =>
  items.length === 0
    ? none === undefined
      ? undefined
      : html`<p>${missing(none)}</p>`
    : html`<ul>${items.map(
        (item) => html`<li>${item}</li>
`,
      )}</ul>`;
