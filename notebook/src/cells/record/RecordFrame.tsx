import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/*
 * The record as it prints, in a document of its own: its style sheet is that of the saved page and not that of the
 * sheet around it. No script runs in the frame (it is sandboxed); the policy of this page, which the frame takes over,
 * forbids style sheets in the text of a page, so the record's is given to it as an object.
 */

/** What stands in the frame before the record does. */
const empty = '<!doctype html><html lang="en"><head><title>Commissioning record</title></head><body></body></html>';

interface RecordFrameProps {
  /** The record as an HTML page. */
  readonly page: string;
  readonly name: string;
  /** Further buttons. */
  readonly children: ComponentChildren;
}

/** The record as it prints, and what can be done with it. */
export function RecordFrame({ page, name, children }: RecordFrameProps) {
  const frame = useRef<HTMLIFrameElement>(null);
  const shown = useRef(page);
  shown.current = page;
  const fill = (): void => {
    if (frame.current) show(frame.current, shown.current);
  };
  useEffect(fill, [page]);
  return (
    <div class="record-frame" data-screen>
      <div class="buttons">
        <button type="button" onClick={() => frame.current?.contentWindow?.print()}>
          Print the record
        </button>
        {children}
      </div>
      <iframe
        ref={frame}
        title={`Commissioning record of ${name}, as it prints`}
        sandbox="allow-same-origin allow-modals"
        srcdoc={empty}
        onLoad={fill}
      />
    </div>
  );
}

/** Puts a record page into a frame, where it was without its old content; the reader's place is kept. */
function show(frame: HTMLIFrameElement, page: string): void {
  const { contentDocument: inside, contentWindow: window } = frame;
  if (!inside?.body || !window) return;
  const record = new DOMParser().parseFromString(page, 'text/html');
  const style = new (window as Window & typeof globalThis).CSSStyleSheet();
  style.replaceSync([...record.querySelectorAll('style')].map(({ textContent }) => textContent).join('\n'));
  const { scrollY } = window;
  inside.adoptedStyleSheets = [style];
  inside.title = record.title;
  inside.body.replaceChildren(...[...record.body.childNodes].map((node) => inside.importNode(node, true)));
  window.scrollTo(0, scrollY);
}
