import type { ComponentChildren } from 'preact';

/** Something wide that scrolls by itself, with the keyboard too. */
export function Scroll({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable for the arrow keys.
    <section class="scroll" aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
