import { describe, expect, it } from 'vitest';
import { measuredCurves } from './measuredCurves.js';
import { curveScenario } from './scenarios/curveScenario.js';
import { simulate } from './simulate.js';

const text = 'time_s,t_mid_pct_per_m,sma_od_per_m,hrr_kw\n0,100,0,5\n2,80,,6\n4,50,0.301,7\n';

describe('measuredCurves', () => {
  it('reads transmission and optical density as transmittance of a metre, and leaves the rest', () => {
    const curves = measuredCurves(text);
    expect(curves.map(({ name }) => name)).toEqual(['t_mid_pct_per_m', 'sma_od_per_m']);
    expect(curves[0]?.perMetre).toEqual([1, 0.8, 0.5]);
    expect(curves[1]?.perMetre[1]).toBeNaN();
    expect(curves[1]?.perMetre[2]).toBeCloseTo(0.5, 3);
    expect(curves[1]?.seconds).toEqual([0, 2, 4]);
  });

  it('says what is missing', () => expect(() => measuredCurves('a,b\n1,2\n')).toThrow('needs a column time_s'));
});

describe('curveScenario', () => {
  it('lays a curve into a beam, which is then labelled as smoke, at 1, 10 and 60 s', () => {
    const curve = { seconds: [0, 60, 120, 180], perMetre: [1, 0.98, 0.85, 0.7] };
    for (const intervalSeconds of [1, 10, 60]) {
      const scenario = curveScenario(curve, 5, { metres: 4, intervalSeconds, ranges: 'weighing' });
      const [beam] = simulate(scenario, 5).beams;
      const smoke = beam?.truth.causes.find(({ cause }) => cause === 'smoke-like');
      expect(smoke?.magnitude).toBeGreaterThan(60);
    }
  });
});
