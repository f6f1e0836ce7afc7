// Jumps of a level in 166,667 rows of which three are jumps: the median time of five searches. One line of JSON.
import { changePoints } from '../../packages/beamkeep/dist/statistics/index.js';

const rows = 166_667;
let state = 7;
/** Uniform in [0, 1), the same in every run (mulberry32). */
const uniform = () => {
  state = (state + 0x6d2b79f5) >>> 0;
  let t = Math.imul(state ^ (state >>> 15), 1 | state);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
};
const jumps = [40_000, 90_000, 140_000];
const level = (row) => 3 * jumps.filter((jump) => row >= jump).length;
const noise = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
const values = Float64Array.from({ length: rows }, (_, row) => level(row) + noise() + (uniform() < 0.01 ? 20 : 0));

const times = [];
let found = [];
for (let run = 0; run < 5; run++) {
  const before = process.cpuUsage();
  found = changePoints(values, { penalty: 3 * Math.log(rows), scale: 1 });
  const { user, system } = process.cpuUsage(before);
  times.push((user + system) / 1e6);
}
console.log(JSON.stringify({ processor: times.sort((a, b) => a - b)[2], found }));
