import { placedBelowCeiling } from 'beamkeep/numbers';
import type { CountedNuisance, TradeOffJson } from 'beamkeep/planning';
import type { Site } from 'beamkeep/site';
import { proxy } from 'comlink';
import { useEffect, useState } from 'preact/hooks';
import type { Progress } from '../../bench/reading.js';
import type { TradeOffHall } from '../../bench/tradeOffOf.js';
import { Asked } from '../../parts/Asked.js';
import { Choice } from '../../parts/Choice.js';
import { numberIn } from '../../parts/numberIn.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings } from '../../sheet/sheet.js';
import { helper } from '../../state/helper.js';
import { edit } from '../../state/store.js';
import { bytesInWords, figure } from '../../words/numbers.js';
import { NeedsLog } from '../NeedsLog.js';
import { type Answer, useAnswer } from '../useAnswer.js';
import type { OpenLog } from '../useLog.js';
import { Weighed } from './Weighed.js';

/** What does each threshold and each delay cost: time to alarm against nuisance. */
export function TradeOffCell({ cell }: { cell: Cell<'tradeoff'> }) {
  return <NeedsLog cell={cell.id}>{(log) => <TradeOff key={log.reading.json} cell={cell} log={log} />}</NeedsLog>;
}

/** Fires that can be chosen, by their short names. */
const fires: readonly (readonly [name: string, words: string])[] = [
  ['slow:wood', 'slow, wood'],
  ['medium:wood', 'medium, wood'],
  ['fast:polyurethaneFoam', 'fast, polyurethane foam'],
  ['ultra-fast:polyurethaneFoam', 'ultra-fast, polyurethane foam'],
  ['200kW:heptane', 'steady 200 kW, heptane'],
  ['smouldering', 'smouldering'],
];

const fields = [
  ['ceiling', 'Ceiling above the fuel [m]'],
  ['area', 'Floor area under one roof [m²]'],
  ['spacing', 'Distance between beams [m]'],
  ['diameter', 'Diameter of the fires [m]'],
  ['gradient', 'Air warmer with height by [K/m]'],
  ['roofWarmer', 'Air under the roof warmer by [K]'],
] as const;

/** Where the ceiling is taken to be while nobody says [m]: right above the highest beam, or 12 m. */
function usualCeiling({ beams }: Site): number {
  const heights = beams.flatMap(({ height }) => height ?? []);
  return heights.length === 0 ? 12 : Number((Math.max(...heights) + placedBelowCeiling.value).toFixed(2));
}

/** How long typing must rest before it is reckoned again [ms]. */
const rest = 300;

function TradeOff({ cell, log }: { cell: Cell<'tradeoff'>; log: OpenLog }) {
  const { reading } = log;
  const { settings } = cell;
  const change = (to: Partial<Settings['tradeoff']>, mark?: string): void =>
    edit((sheet) => set(sheet, cell, to), mark && `${cell.id} ${mark}`);
  const ids = reading.site.beams.map(({ id }) => id);
  const beam = ids.find((id) => id === settings.beam) ?? ids[0] ?? '';
  const counting = useCounting(log);
  const usual = usualCeiling(reading.site);
  const hall: TradeOffHall = {
    ceiling: settings.ceiling.trim() === '' ? usual : numberIn(settings.ceiling),
    area: numberIn(settings.area),
    spacing: numberIn(settings.spacing),
    gradient: numberIn(settings.gradient),
    roofWarmer: numberIn(settings.roofWarmer),
    diameter: numberIn(settings.diameter),
    fires: settings.fires,
  };
  const counted = counting.is === 'counted' ? counting.counted : undefined;
  const answer = useRested(counted, reading.site, beam, hall);
  return (
    <>
      <div class="settings">
        <Choice
          legend="Beam"
          options={ids.map((id) => [id, id] as const)}
          value={beam}
          onChange={(id) => change({ beam: id, threshold: null, delay: null })}
        />
        {fields.map(([key, words]) => (
          <label class="field" key={key}>
            <span>{words}</span>
            <input
              inputMode="decimal"
              size={8}
              value={settings[key]}
              {...(key === 'ceiling' ? { placeholder: figure(usual) } : {})}
              onInput={(event) => change({ [key]: event.currentTarget.value }, key)}
            />
          </label>
        ))}
        <fieldset class="choice">
          <legend>Fires that must be found</legend>
          <div class="ticks">
            {fires.map(([name, words]) => (
              <label key={name}>
                <input
                  type="checkbox"
                  checked={settings.fires.includes(name)}
                  onChange={(event) =>
                    change({
                      fires: event.currentTarget.checked
                        ? [...settings.fires, name]
                        : settings.fires.filter((other) => other !== name),
                    })
                  }
                />
                <span>{words}</span>
              </label>
            ))}
          </div>
        </fieldset>
      </div>
      <Asked
        of={[
          ['Beam', beam],
          ...fields.map(([key, words]) => [words, key === 'ceiling' ? figure(hall.ceiling) : settings[key]] as const),
        ]}
      />
      <CountingOn counting={counting} />
      {counted && settings.fires.length === 0 && <p class="empty">Choose a fire that must be found.</p>}
      {counted && settings.fires.length > 0 && <Told answer={answer} cell={cell} log={log} change={change} />}
    </>
  );
}

interface ToldProps {
  readonly answer: Answer<TradeOffJson>;
  readonly cell: Cell<'tradeoff'>;
  readonly log: OpenLog;
  readonly change: (to: Partial<Settings['tradeoff']>, mark?: string) => void;
}

/** The last answer stays in sight while the next one is reckoned: the page does not jump. */
function Told({ answer, cell, log, change }: ToldProps) {
  const [last, setLast] = useState<TradeOffJson>();
  useEffect(() => {
    if (answer.is === 'told') setLast(answer.told);
  }, [answer]);
  if (answer.is === 'refused') return <p class="trouble">{answer.why}</p>;
  const shown = answer.is === 'told' ? answer.told : last;
  const tradeOff = shown?.beams[0];
  const findings = log.reading.beams.find(({ id }) => id === tradeOff?.beam)?.findings ?? [];
  const smokeLike = findings.filter(({ cause }) => cause === 'smoke-like').length;
  if (!shown || !tradeOff) return <p class="empty">Reckoning the fires …</p>;
  return (
    <Weighed
      json={shown}
      tradeOff={tradeOff}
      site={log.reading.site.name}
      smokeLike={smokeLike}
      settings={cell.settings}
      change={change}
    />
  );
}

type Counting =
  | { readonly is: 'counting'; readonly progress: Progress | null; readonly stop: () => void }
  | { readonly is: 'counted'; readonly counted: CountedNuisance }
  | { readonly is: 'stopped'; readonly why: string; readonly again: () => void };

/** Counts the alarms of the log at every setting, once for all cells that ask. */
function useCounting({ bench }: OpenLog): Counting {
  const [turn, setTurn] = useState(0);
  const [state, setState] = useState<Counting>({ is: 'counting', progress: null, stop: () => undefined });
  useEffect(() => {
    let outdated = false;
    const stop = (): void => void bench.stopNuisance();
    const tell = (progress: Progress): void => {
      if (!outdated) setState({ is: 'counting', progress, stop });
    };
    setState({ is: 'counting', progress: null, stop });
    void bench.nuisance(proxy(tell)).then(
      (counted) => !outdated && setState({ is: 'counted', counted }),
      (error: unknown) =>
        !outdated &&
        setState({ is: 'stopped', why: (error as Error).message, again: () => setTurn((before) => before + 1) }),
    );
    return () => {
      outdated = true;
    };
  }, [bench, turn]);
  return state;
}

function CountingOn({ counting }: { counting: Counting }) {
  if (counting.is === 'counted') return null;
  if (counting.is === 'stopped')
    return (
      <div class="trouble" role="alert">
        <p>The alarms of the log were not counted: {counting.why}.</p>
        <p data-screen>
          <button type="button" onClick={counting.again}>
            Count them
          </button>
        </p>
      </div>
    );
  const { progress, stop } = counting;
  const share = progress && progress.total > 0 ? progress.done / progress.total : 0;
  return (
    <div class="progress">
      <label>
        <span aria-live="polite">
          Counting the alarms of every setting … {Math.round(100 * share)} %
          {progress ? ` of ${bytesInWords(progress.total)}` : ''}
        </span>
        <progress max={1} value={share} />
      </label>
      <button type="button" onClick={stop}>
        Stop
      </button>
    </div>
  );
}

/** The costs, reckoned once typing rests. */
function useRested(
  counted: CountedNuisance | undefined,
  site: OpenLog['reading']['site'],
  beam: string,
  hall: TradeOffHall,
): Answer<TradeOffJson> {
  const wanted = JSON.stringify([beam, hall]);
  const [rested, setRested] = useState(wanted);
  useEffect(() => {
    const timer = setTimeout(() => setRested(wanted), rest);
    return () => clearTimeout(timer);
  }, [wanted]);
  return useAnswer(
    counted && hall.fires.length > 0 && rested === wanted ? () => helper().tradeOff(counted, site, beam, hall) : null,
    [counted, rested === wanted, rested],
  );
}
