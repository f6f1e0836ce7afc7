import { describe, expect, it } from 'vitest';
import { layBeams } from '../layout/layBeams.js';
import { lossBudget } from '../range/lossBudget.js';
import { ruleSetNamed } from '../rules/ruleSets.js';
import { budgetBar } from './budgetBar.js';
import { planView } from './planView.js';
import { roundLength } from './scale.js';
import { sectionView } from './sectionView.js';
import { drawing, element, escaped, text } from './svg.js';

const laid = layBeams({
  hall: { length: 62, width: 40, height: 18, roof: { shape: 'pitched', apex: 24 } },
  rules: ruleSetNamed('bs5839-1'),
  lowerRows: [8],
});
const budget = lossBudget({
  optics: { divergenceDegrees: 1.2, receiverMetres: 0.03, reflector: { diameterMetres: 0.2, spreadDegrees: 0.4 } },
  separation: 62,
  nearest: 8,
  farthest: 100,
  halfAngle: 0.5,
  aimOffset: 0.2,
  movement: 0.6,
  dirtPercent: 8,
  alarmThreshold: 35,
});

/** Numbers of an attribute, in order. */
const numbers = (svg: string, tag: string, attribute: string): number[] =>
  [...svg.matchAll(new RegExp(`<${tag}[^>]* ${attribute}="([^"]+)"`, 'g'))].map(([, value]) => Number(value));

describe('drawings', () => {
  it.each([
    ['plan', planView(laid)],
    ['section', sectionView(laid)],
    ['budget', budgetBar(budget)],
  ])('%s: one well-formed SVG with title and description, no script, no link', (_, svg) => {
    expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg"')).toBe(true);
    expect(svg).toMatch(/<title id="[^"]+">[^<]+<\/title><desc id="[^"]+">[^<]+<\/desc>/);
    expect(svg).toContain('role="img"');
    expect(svg).not.toMatch(/<script|href|onload|<style|NaN|Infinity|undefined/);
    const open = [...svg.matchAll(/<([a-z]+)[^>]*?(\/?)>/g)].filter(([, , closed]) => closed !== '/');
    expect([...svg.matchAll(/<\/[a-z]+>/g)]).toHaveLength(open.length);
  });

  it('the plan is to scale: rows lie as far apart as they do in the hall', () => {
    const svg = planView(laid);
    const perMetre = (760 - 192) / 62;
    const ys = [...new Set(numbers(svg, 'line', 'y1'))].sort((a, b) => a - b);
    const across = [...new Set(laid.rows.map((row) => row.across))].sort((a, b) => a - b);
    ys.slice(1).forEach((y, i) => {
      const [from, to] = [across[i] as number, across[i + 1] as number];
      expect((y - (ys[i] as number)) / perMetre).toBeCloseTo(to - from, 2);
    });
    expect(ys).toHaveLength(across.length);
  });

  it('the section is to scale in both directions', () => {
    const svg = sectionView(laid);
    const perMetre = (760 - 112) / 40;
    const dots = [...svg.matchAll(/<circle cx="([^"]+)" cy="([^"]+)" r="4.5"/g)];
    expect(dots).toHaveLength(laid.rows.length);
    laid.rows.forEach(({ across, height }, i) => {
      expect(Number(dots[i]?.[1])).toBeCloseTo(56 + across * perMetre, 2);
      expect(Number(dots[i]?.[2])).toBeCloseTo(56 + (24 - height) * perMetre, 2);
    });
  });

  it('a bar is never longer than its budget, even when it is overdrawn', () => {
    const svg = budgetBar(budget);
    const widths = [...svg.matchAll(/width="([^"]+)" height="34"/g)].map(([, width]) => Number(width));
    expect(Math.max(...widths)).toBeLessThanOrEqual(760 - 32);
    expect(widths.every((width) => width >= 0)).toBe(true);
  });

  it('names of any kind cannot break out of it', () => {
    expect(escaped('<script>"&\'\u0007</script>')).toBe('&lt;script&gt;&quot;&amp;&#39;&lt;/script&gt;');
    expect(text('<b>', 1, 2)).toContain('&lt;b&gt;');
    expect(element('a', { title: '"><script>' })).toBe('<a title="&quot;&gt;&lt;script&gt;"/>');
    expect(drawing({ width: 1, height: 1, id: 'x', title: '<', description: '&' })).toContain('&lt;');
  });

  it('the scale bar is a round length', () => {
    expect([3, 40, 62, 120, 1e9].map(roundLength)).toEqual([1, 10, 20, 50, 1000]);
  });
});
