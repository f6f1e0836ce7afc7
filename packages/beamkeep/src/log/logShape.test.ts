import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logHead } from './head.js';
import { logShape, readingsOf } from './logShape.js';

const site = parseSite({ format: 'beamkeep-site/1', beams: [{ id: 'B1', layout: 'reflective', separation: 50 }] });
const shape = (text: string, name: string | undefined) =>
  logShape(logHead('a.csv', strToU8(text), true, 50), site, [{ name, by: 'beams[0] signalColumn' }]);

describe('logShape', () => {
  it('a name and a value are the long form', () => {
    expect(shape('time,name,value\n1,b1,5\n', 'b1').long).toEqual({ name: 1, value: 2 });
    expect(shape('time,name,value\n1,7,5\n', '7').long).toEqual({ name: 1, value: 2 });
    expect(shape('time,name,value\n1,north,5\n', undefined).long).toEqual({ name: 1, value: 2 });
  });
  it('a wanted column in the header is not', () => {
    expect(shape('time,state,b1\n1,ok,5\n', 'b1').long).toBeUndefined();
    expect(shape('time,doors,level\n1,0,5\n', 'b1').long).toBeUndefined();
  });
  it('tells the readings and their cells', () => {
    expect([...readingsOf(shape('time,a,b\n1,2,3\n4,5,6\n', 'a'))]).toEqual([
      ['a', ['2', '5']],
      ['b', ['3', '6']],
    ]);
    expect([...readingsOf(shape('time,name,value\n1,x,5\n2,y,6\n', 'x')).keys()]).toEqual(['x', 'y']);
  });
  it('a log without a column beside time is refused', () =>
    expect(() => shape('time\n1\n', 'b1')).toThrow('no column beside time'));
});
