import type { ComponentChildren } from 'preact';

/** Something wide, or tall too, that scrolls by itself, with the keyboard too. */
export function Scroll({
  label,
  tall = false,
  children,
}: {
  label: string;
  tall?: boolean;
  children: ComponentChildren;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a section with a name would be a landmark, and there are many.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable for the arrow keys.
    <div class={tall ? 'scroll tall' : 'scroll'} role="group" aria-label={label} tabIndex={0}>
      {children}
    </div>
  );
}
