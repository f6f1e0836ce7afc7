import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Window } from '../../bench/reading.js';
import { margins } from '../../plots/timeAxis.js';
import type { Desk } from '../../state/desk.js';

interface CursorProps {
  readonly desk: Desk;
  readonly window: Window;
  readonly children: ComponentChildren;
}

/** One hairline through all lanes, where the pointer is; the values at it stand at the head of each lane. */
export function Cursor({ desk, window, children }: CursorProps) {
  const frame = useRef<HTMLDivElement>(null);
  const width = frame.current?.clientWidth ?? 0;
  const { l, r } = margins(width);
  const at = desk.cursor.value;
  const inside = at !== null && at >= window.from && at <= window.to;
  const left = inside ? l + ((at - window.from) / (window.to - window.from)) * (width - l - r) : 0;

  function follow(event: PointerEvent): void {
    const box = frame.current?.getBoundingClientRect();
    if (!box) return;
    const room = margins(box.width);
    const share = (event.clientX - box.left - room.l) / (box.width - room.l - room.r);
    desk.cursor.value = share >= 0 && share <= 1 ? window.from + share * (window.to - window.from) : null;
  }

  /** A click that draws nothing asks about its place. The plot takes the pointer over meanwhile, so the page listens. */
  function press(down: PointerEvent): void {
    const place = desk.cursor.value;
    const release = (up: PointerEvent): void => {
      if (place !== null && Math.abs(up.clientX - down.clientX) <= 3) desk.asked.value = place;
    };
    addEventListener('pointerup', release, { once: true });
  }

  return (
    <div
      ref={frame}
      class="under-cursor"
      onPointerMove={follow}
      onPointerDown={press}
      onPointerLeave={() => {
        desk.cursor.value = null;
      }}
    >
      {children}
      {inside && <div class="hairline" data-screen style={{ left: `${left}px` }} />}
    </div>
  );
}
