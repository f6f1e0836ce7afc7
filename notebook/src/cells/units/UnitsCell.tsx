import { convert, UsageError } from 'beamkeep';
import { type Unit, units } from 'beamkeep/attenuation';
import { useId } from 'preact/hooks';
import { Asked } from '../../parts/Asked.js';
import { numberIn } from '../../parts/numberIn.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { figure } from '../../words/numbers.js';

const signs: Readonly<Record<Unit, readonly [name: string, sign: string]>> = {
  transmittance: ['transmittance of the path', ''],
  percent: ['obscuration of the path', '%'],
  'optical-density': ['optical density of the path', ''],
  decibels: ['loss of the path', 'dB'],
  'percent-per-metre': ['obscuration per metre', '%/m'],
  'percent-per-foot': ['obscuration per foot', '%/ft'],
  'optical-density-per-metre': ['optical density per metre', '1/m'],
  'optical-density-per-foot': ['optical density per foot', '1/ft'],
  'decibels-per-metre': ['loss per metre', 'dB/m'],
  'extinction-per-metre': ['extinction coefficient (natural)', '1/m'],
};

/** An amount of smoke in every unit. */
export function UnitsCell({ cell }: { cell: Cell<'units'> }) {
  const { value, from, path } = cell.settings;
  const id = useId();
  const change = (to: Partial<Settings['units']>): void => edit((sheet) => set(sheet, cell, to), `${cell.id} units`);
  const source = units.find((unit) => unit === from) ?? 'percent';
  const metres = numberIn(path);
  return (
    <>
      <div class="settings">
        <label class="field">
          <span>Value</span>
          <input
            inputMode="decimal"
            value={value}
            aria-describedby={`${id}-answer`}
            onInput={(event) => change({ value: event.currentTarget.value })}
          />
        </label>
        <label class="field">
          <span>Unit</span>
          <select value={source} onChange={(event) => change({ from: event.currentTarget.value })}>
            {units.map((unit) => (
              <option key={unit} value={unit}>
                {signs[unit][0]} {signs[unit][1] && `[${signs[unit][1]}]`}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>Smoke crossed [m]</span>
          <input inputMode="decimal" value={path} onInput={(event) => change({ path: event.currentTarget.value })} />
        </label>
      </div>
      <Asked of={[['Smoke crossed', path && `${path} m`]]} />
      <table class="units" id={`${id}-answer`}>
        <caption class="unseen">The same smoke in every unit</caption>
        <tbody>
          {units.map((unit) => (
            <tr key={unit} class={unit === source ? 'given' : ''}>
              <th scope="row">{signs[unit][0]}</th>
              <td>{answer(value, source, unit, metres)}</td>
              <td class="unit">{signs[unit][1]}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="key">
        The length of smoke that the light crosses is <b>twice</b> the separation of a reflective beam, once that of an
        end-to-end beam. Per foot and per metre are exponents of the path, not quotients of the percentage.
      </p>
    </>
  );
}

function answer(value: string, from: Unit, to: Unit, pathMetres: number): string {
  try {
    const { result } = convert({
      value: numberIn(value),
      from,
      to,
      ...(Number.isNaN(pathMetres) ? {} : { pathMetres }),
    });
    return result === 'infinite' ? 'without end' : figure(result, 4);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    return from === to ? error.message : '·';
  }
}
