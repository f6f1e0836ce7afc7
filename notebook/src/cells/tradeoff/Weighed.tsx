import { limitsBroken, settingsOf, type TradeOff, type TradeOffJson } from 'beamkeep/planning';
import { useCallback } from 'preact/hooks';
import { fileName } from '../../parts/fileName.js';
import { Scroll } from '../../parts/Scroll.js';
import { saveText } from '../../parts/saveText.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import {
  costFigure,
  costHeight,
  limitLetter,
  type Pair,
  settingFigure,
  settingHeight,
} from '../../plots/tradeOffFigure.js';
import type { Settings } from '../../sheet/sheet.js';
import { figure } from '../../words/numbers.js';
import { typeset } from '../../words/typeset.js';
import { bandInWords, costsAt, fireInShort, nuisanceInWords, tradeOffSentences } from './tradeOffWords.js';

interface WeighedProps {
  readonly json: TradeOffJson;
  readonly tradeOff: TradeOff;
  readonly site: string;
  /** Stretches of the beam that cannot be told from smoke. */
  readonly smokeLike: number;
  readonly settings: Settings['tradeoff'];
  readonly change: (to: Partial<Settings['tradeoff']>, mark?: string) => void;
}

/** Both costs of every setting of one beam. */
export function Weighed({ json, tradeOff, site, smokeLike, settings, change }: WeighedProps) {
  const { beam, current, thresholds, delays, limits } = tradeOff;
  const tried: Pair = {
    threshold: thresholds.find((each) => each === settings.threshold) ?? current.threshold,
    delay: delays.find((each) => each === settings.delay) ?? current.delay,
  };
  const costs = useCallback(
    (width: number, colours: Palette) => costFigure(tradeOff, tried, width, colours),
    [tradeOff, tried.threshold, tried.delay],
  );
  const plane = useCallback(
    (width: number, colours: Palette) => settingFigure(tradeOff, tried, width, colours),
    [tradeOff, tried.threshold, tried.delay],
  );
  const sentences = tradeOffSentences(tradeOff, tried, smokeLike);
  const drawn = settingsOf(tradeOff).length > 0;
  return (
    <>
      <div class="settings">
        <AxisSlider
          words="Tried threshold"
          unit="%"
          values={thresholds}
          value={tried.threshold}
          onChange={(threshold) => change({ threshold, delay: tried.delay }, 'threshold')}
        />
        <AxisSlider
          words="Tried delay"
          unit="s"
          values={delays}
          value={tried.delay}
          onChange={(delay) => change({ threshold: tried.threshold, delay }, 'delay')}
        />
        <button
          type="button"
          disabled={settings.threshold === null && settings.delay === null}
          onClick={() => change({ threshold: null, delay: null })}
        >
          Back to the setting of the site
        </button>
      </div>
      <div aria-live="polite" class="said">
        {sentences.map((words) => (
          <p class="answer" key={words}>
            {words}
          </p>
        ))}
      </div>
      <p class="trouble">{typeset(`${tradeOff.leftOut[0]} ${tradeOff.decides}`)}</p>
      {drawn ? (
        <>
          <Plot
            figure={costs}
            height={costHeight}
            name={[site, 'costs of settings', beam]}
            label={`Beam ${beam}: time to alarm against nuisance alarms a year, one mark a setting. On the frontier: ${tradeOff.frontier.map(pairInWords).join('; ')}. ${sentences[0]} The same as numbers: in the tables below.`}
          />
          <Plot
            figure={plane}
            height={settingHeight}
            name={[site, 'settings and limits', beam]}
            label={`Beam ${beam}: threshold across, delay up, lines of equal time to alarm, limits of standards at ${limits.map(({ of, side, value }) => `${of} at ${side} ${figure(value)} ${of === 'threshold' ? '%' : 's'}`).join(', ')}. The setting of the site is ${pairInWords(current)}.`}
          />
        </>
      ) : (
        <p class="empty">No setting finds all of these fires while they are watched: nothing to draw.</p>
      )}
      <p class="key">
        A filled dot is on the frontier: no other setting is better in one cost without being worse in the other. Rings
        are the other settings, crosses those outside a limit. The bars are the band: place of the fire, soot yield,
        extinction, and where published laws have the smoke layer. The large plus is the setting of the site, the
        diamond the tried one. Labels on the lines of the second plot are seconds to alarm of the slowest fire.
      </p>
      <ol class="limits" type="a">
        {limits.map(({ words, value, of, side, clause }, row) => (
          <li key={limitLetter(row)}>
            {of} at {side} {figure(value)} {of === 'threshold' ? '%' : 's'}: {words}{' '}
            <span class="quiet">({clause})</span>
          </li>
        ))}
      </ol>
      <SettingTable tradeOff={tradeOff} tried={tried} />
      <WholeGrid tradeOff={tradeOff} />
      {tradeOff.warnings.length > 0 && (
        <ul class="warnings">
          {tradeOff.warnings.map((words) => (
            <li key={words}>{typeset(words)}</li>
          ))}
        </ul>
      )}
      {tradeOff.assumed.length > 0 && <p class="key">Taken for granted: {tradeOff.assumed.join('; ')}.</p>}
      <p class="key">Left out: {typeset(tradeOff.leftOut.slice(1).join(' '))}</p>
      <div class="buttons" data-screen>
        <button
          type="button"
          onClick={() =>
            saveText(fileName([site, 'trade-off', beam], 'json'), 'application/json', JSON.stringify(json, null, 2))
          }
        >
          Save as JSON
        </button>
      </div>
    </>
  );
}

const pairInWords = ({ threshold, delay }: Pair): string => `${figure(threshold)} % and ${figure(delay)} s`;

interface AxisSliderProps {
  readonly words: string;
  readonly unit: string;
  /** What can be set, rising. */
  readonly values: readonly number[];
  readonly value: number;
  readonly onChange: (value: number) => void;
}

/** A slider over the values of one axis of the grid. */
function AxisSlider({ words, unit, values, value, onChange }: AxisSliderProps) {
  return (
    <label class="field slider">
      <span>
        {words}: <b>{figure(value)}</b> {unit}
      </span>
      <input
        type="range"
        min={0}
        max={values.length - 1}
        step={1}
        value={values.indexOf(value)}
        aria-valuetext={`${figure(value)} ${unit}`}
        onInput={(event) => onChange(values[event.currentTarget.valueAsNumber] ?? value)}
      />
    </label>
  );
}

/** The setting of the site, the tried one, and those on the frontier. */
function SettingTable({ tradeOff, tried }: { tradeOff: TradeOff; tried: Pair }) {
  const { fires, frontier, current, limits } = tradeOff;
  const same = tried.threshold === current.threshold && tried.delay === current.delay;
  const rows: readonly (readonly [string, Pair])[] = [
    ['now', current],
    ...(same ? [] : [['tried', tried] as const]),
    ...frontier.map((each) => ['frontier', each] as const),
  ];
  return (
    <Scroll label="Settings and their costs">
      <table class="costs">
        <caption>The setting of the site, the tried one, and the frontier, quickest first</caption>
        <thead>
          <tr>
            <th scope="col">setting</th>
            <th scope="col">threshold</th>
            <th scope="col">delay</th>
            {fires.map((fire) => (
              <th scope="col" key={fire.fire}>
                {fireInShort(fire)}
              </th>
            ))}
            <th scope="col">nuisance</th>
            <th scope="col">limits</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, pair]) => {
            const costs = costsAt(tradeOff, pair);
            const broken = limits.flatMap((limit, row) =>
              limitsBroken(pair, [limit]).length > 0 ? [limitLetter(row)] : [],
            );
            return (
              <tr key={`${name} ${pair.threshold} ${pair.delay}`}>
                <th scope="row">{name}</th>
                <td>{figure(pair.threshold)} %</td>
                <td>{figure(pair.delay)} s</td>
                {fires.map((fire, i) => {
                  const cost = costs.fires[i];
                  return (
                    <td class="cost" key={fire.fire}>
                      {cost && `${bandInWords(cost.seconds, 's')}, ${bandInWords(cost.heat, 'kW')}`}
                    </td>
                  );
                })}
                <td class="cost">{costs.nuisance && nuisanceInWords(costs.nuisance)}</td>
                <td>{broken.length === 0 ? 'kept' : `outside ${broken.join(', ')}`}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scroll>
  );
}

/** The whole grid as numbers. */
function WholeGrid({ tradeOff }: { tradeOff: TradeOff }) {
  const { thresholds, delays, fires, nuisance } = tradeOff;
  const cell = (row: number, column: number): string => {
    const seconds = Math.max(
      ...fires.map(({ cells }) => cells[row]?.[column]?.seconds.value ?? Number.POSITIVE_INFINITY),
    );
    const perYear = nuisance?.cells[row]?.[column]?.perYear;
    return `${Number.isFinite(seconds) ? `${figure(seconds)} s` : '·'}${perYear === undefined ? '' : `; ${figure(perYear)}`}`;
  };
  return (
    <details class="table">
      <summary>Every setting as a table</summary>
      <Scroll label="Every setting" tall>
        <table>
          <caption>Time to alarm of the slowest fire; nuisance alarms a year. A dot: not found while watched.</caption>
          <thead>
            <tr>
              <th scope="col">threshold</th>
              {delays.map((delay) => (
                <th scope="col" key={delay}>
                  {figure(delay)} s
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {thresholds.map((threshold, row) => (
              <tr key={threshold}>
                <th scope="row">{figure(threshold)} %</th>
                {delays.map((delay, column) => (
                  <td key={delay}>{cell(row, column)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </details>
  );
}
