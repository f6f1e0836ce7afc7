import { useEffect, useRef } from 'preact/hooks';

/** A drawing that the library made as SVG, in the ink of the page. */
export function Drawing({ svg, label }: { svg: string; label: string }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    box.current?.replaceChildren(document.importNode(drawing, true));
  }, [svg]);
  return <div class="drawing" ref={box} role="img" aria-label={label} />;
}
