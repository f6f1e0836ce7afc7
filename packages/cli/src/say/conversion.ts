import type { Conversion } from 'beamkeep';
import type { Unit } from 'beamkeep/attenuation';
import { figure } from './numbers.js';

/** How each unit is written behind a number. */
const symbols: Readonly<Record<Unit, string>> = {
  transmittance: 'of the light comes through',
  percent: '% obscuration',
  'optical-density': 'optical density',
  decibels: 'dB',
  'percent-per-metre': '%/m',
  'percent-per-foot': '%/ft',
  'optical-density-per-metre': 'optical density per metre',
  'optical-density-per-foot': 'optical density per foot',
  'decibels-per-metre': 'dB/m',
  'extinction-per-metre': '1/m of extinction (natural logarithm)',
};

const amount = (value: number | 'infinite', unit: Unit): string =>
  `${value === 'infinite' ? value : Number(value.toPrecision(6))} ${symbols[unit]}`;

/** A conversion in one line. */
export function conversionLine({ value, from, to, path, result }: Conversion): string {
  const over = path === null ? '' : ` over ${figure(path)} m of smoke`;
  return `${amount(value, from)}${over} is ${amount(result, to)}`;
}
