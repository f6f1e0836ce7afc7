import type { BudgetPart, LossBudget } from '../range/lossBudget.js';
import { drawing, element, text } from './svg.js';

/** How dark each part is drawn; what is left is open. Words stand beside every part: no meaning hangs on a shade. */
const shade: Readonly<Record<BudgetPart['part'], number>> = {
  range: 0.75,
  aim: 0.55,
  dirt: 0.38,
  structure: 0.22,
  left: 0,
};

const margin = 16;
const high = 34;

/**
 * Both budgets as stacked bars in decibels, with their parts in words below.
 *
 * @param budget from `lossBudget`
 * @param width of the drawing [pixels]
 * @param id before every id in it
 * @returns SVG
 */
export function budgetBar(budget: LossBudget, width = 760, id = 'loss-budget'): string {
  const bars = [
    ['Received light', budget.light],
    ['Alarm threshold', budget.alarm],
  ] as const;
  const step = 108;
  const description = bars
    .map(([name, { decibels, parts }]) => `${name}, ${said(decibels)}: ${parts.map(words).join(', ')}`)
    .join('. ');
  return drawing(
    { width, height: bars.length * step + margin, id, title: 'Loss budget of a beam', description: `${description}.` },
    ...bars.flatMap(([name, { decibels, parts }], i) => {
      const top = margin + i * step;
      return [
        text(`${name}: ${said(decibels)}`, margin, top + 12, { 'font-weight': 600 }),
        ...bar(parts, decibels, top + 20, width),
      ];
    }),
  );
}

const said = (decibels: number): string => `${decibels.toFixed(2)} dB`;
const words = ({ part, decibels }: BudgetPart): string => `${part} ${said(decibels)}`;

/** One stacked bar; what is overdrawn runs past its end and is cut there. */
function bar(parts: readonly BudgetPart[], decibels: number, top: number, width: number): string[] {
  const inside = width - 2 * margin;
  const perDecibel = decibels > 0 ? inside / decibels : 0;
  let from = 0;
  const boxes = parts.map(({ part, decibels: size }) => {
    const start = Math.min(from, decibels);
    const end = Math.min(Math.max(start, from + size), decibels);
    from += size;
    return element('rect', {
      x: margin + start * perDecibel,
      y: top,
      width: (end - start) * perDecibel,
      height: high,
      fill: 'currentColor',
      'fill-opacity': shade[part],
    });
  });
  const frame = element('rect', {
    x: margin,
    y: top,
    width: inside,
    height: high,
    fill: 'none',
    stroke: 'currentColor',
    'stroke-width': 1.5,
  });
  const share = inside / parts.length;
  const names = parts.flatMap((each, i) => [
    element('rect', {
      x: margin + i * share,
      y: top + high + 10,
      width: 12,
      height: 12,
      fill: 'currentColor',
      'fill-opacity': shade[each.part],
      stroke: 'currentColor',
    }),
    text(words(each), margin + i * share + 18, top + high + 20),
  ]);
  return [...boxes, frame, ...names];
}
