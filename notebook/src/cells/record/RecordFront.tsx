import { useEffect, useRef } from 'preact/hooks';
import { frontOf } from './frontOf.js';

/** The first part of the record in the look of the sheet: what wants looking at, what is missing, who was told. */
export function RecordFront({ page }: { page: string }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.replaceChildren(frontOf(page));
  }, [page]);
  return <div class="record-front" ref={box} />;
}
