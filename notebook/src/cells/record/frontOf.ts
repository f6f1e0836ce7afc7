/** Headings of the record one step down: in the sheet they stand below the question of the cell. */
const below: Readonly<Record<string, string>> = { H2: 'h3', H3: 'h4' };

/**
 * What stands in a record page before its beams, as elements of this document: the very words of the page, without its
 * style and without anything that could act.
 */
export function frontOf(page: string): DocumentFragment {
  const front = document.createDocumentFragment();
  const parts = new DOMParser().parseFromString(page, 'text/html').querySelector('main')?.children ?? [];
  for (const part of [...parts]) {
    if (part.matches('.beam')) break;
    front.append(document.importNode(part, true));
  }
  for (const heading of front.querySelectorAll('h2, h3')) {
    const lower = document.createElement(below[heading.tagName] ?? 'h4');
    lower.append(...heading.childNodes);
    heading.replaceWith(lower);
  }
  for (const table of front.querySelectorAll('table')) {
    const scroll = document.createElement('div');
    scroll.className = 'scroll';
    scroll.tabIndex = 0;
    scroll.setAttribute('role', 'group');
    scroll.setAttribute('aria-label', 'Table of the record');
    table.replaceWith(scroll);
    scroll.append(table);
  }
  return front;
}
