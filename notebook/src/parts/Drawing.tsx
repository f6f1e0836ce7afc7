import { useEffect, useRef } from 'preact/hooks';
import type { PictureName } from '../plots/pictureFile.js';
import { SavePicture } from '../plots/SavePicture.js';

interface DrawingProps {
  readonly svg: string;
  /** One sentence that says what the drawing shows. */
  readonly label: string;
  /** What a saved drawing is called, from the wide to the narrow. */
  readonly name: PictureName;
}

/** A drawing that the library made as SVG, in the ink of the page. */
export function Drawing({ svg, label, name }: DrawingProps) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    box.current?.replaceChildren(document.importNode(drawing, true));
  }, [svg]);
  return (
    <div class="plot-frame">
      <div class="drawing" ref={box} role="img" aria-label={label} />
      <SavePicture name={name} picture={async () => svg} />
    </div>
  );
}
