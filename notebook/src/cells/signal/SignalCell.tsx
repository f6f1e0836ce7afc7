import { useEffect, useMemo } from 'preact/hooks';
import { siteZone } from '../../bench/siteZone.js';
import { Choice } from '../../parts/Choice.js';
import { useWidth } from '../../parts/useWidth.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Scale } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { NeedsLog } from '../NeedsLog.js';
import { type OpenLog, wholeOf } from '../useLog.js';
import { BeamLane } from './BeamLane.js';
import { ChosenFinding } from './ChosenFinding.js';
import { Cursor } from './Cursor.js';
import { moveWindow } from './moveWindow.js';
import { SignalTable } from './SignalTable.js';
import { TemperatureLane } from './TemperatureLane.js';
import { ZoomButtons } from './ZoomButtons.js';

const scaleNames: readonly (readonly [Scale, string])[] = [
  ['obscuration', 'obscuration %'],
  ['level', 'level %'],
  ['loss', 'loss dB'],
];

/** How many beams are drawn until a person asks for more. */
const lanesAtFirst = 8;

/** The received signal of every beam, one lane under the other on one time axis. */
export function SignalCell({ cell }: { cell: Cell<'signal'> }) {
  return <NeedsLog cell={cell.id}>{(log) => <Lanes cell={cell} log={log} />}</NeedsLog>;
}

function Lanes({ cell, log }: { cell: Cell<'signal'>; log: OpenLog }) {
  const { desk, reading } = log;
  const { settings } = cell;
  const change = (to: Partial<typeof settings>): void => edit((sheet) => set(sheet, cell, to));
  const [box, width] = useWidth<HTMLDivElement>();
  const zone = useMemo(() => siteZone(reading.site.timeZone), [reading]);
  const whole = wholeOf(reading);
  const window = desk.window.value ?? whole;
  const without = settings.without ?? reading.beams.slice(lanesAtFirst).map(({ id }) => id);
  const shown = reading.beams.filter(({ id }) => !without.includes(id));
  const warm = settings.temperature
    ? temperatures(
        log,
        shown.map(({ id }) => id),
      )
    : [];

  useEffect(() => {
    if (settings.states) desk.askSignalled();
  }, [desk, reading, settings.states]);

  function onKeyDown(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (moveWindow(event.key, desk, reading)) event.preventDefault();
  }

  return (
    <>
      <div class="settings">
        <Choice legend="Scale" options={scaleNames} value={settings.scale} onChange={(scale) => change({ scale })} />
        <Choice
          legend="Axis reaches"
          options={[
            ['data', 'over the data'],
            ['thresholds', 'to the thresholds'],
          ]}
          value={settings.reach}
          onChange={(reach) => change({ reach })}
        />
        <fieldset class="choice">
          <legend>Lanes</legend>
          <div class="ticks">
            {reading.beams.map(({ id }) => (
              <label key={id}>
                <input
                  type="checkbox"
                  checked={!without.includes(id)}
                  onChange={(event) =>
                    change({
                      without: event.currentTarget.checked ? without.filter((other) => other !== id) : [...without, id],
                    })
                  }
                />
                <span>{id}</span>
              </label>
            ))}
            <label>
              <input
                type="checkbox"
                checked={settings.states}
                onChange={(event) => change({ states: event.currentTarget.checked })}
              />
              <span>equipment’s states</span>
            </label>
            {reading.beams.some(({ hasTemperature }) => hasTemperature) && (
              <label>
                <input
                  type="checkbox"
                  checked={settings.temperature}
                  onChange={(event) => change({ temperature: event.currentTarget.checked })}
                />
                <span>temperature</span>
              </label>
            )}
          </div>
        </fieldset>
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: a section with a name would be a landmark, and there can be many. */}
      <div
        ref={box}
        class="lanes"
        role="group"
        aria-label="Plots of the beams: arrow keys, plus, minus, 0, n and p move them, as do the buttons below"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys need a place to be pressed at.
        tabIndex={0}
        onKeyDown={onKeyDown}
      >
        <Cursor desk={desk} window={window}>
          {(width > 0 ? shown : []).map((beam, row) => (
            <BeamLane
              key={beam.id}
              log={log}
              beam={beam}
              settings={settings}
              window={window}
              whole={whole}
              zone={zone}
              width={width}
              lowest={warm.length === 0 && row === shown.length - 1}
            />
          ))}
          {warm.map((beam) => (
            <TemperatureLane key={beam} log={log} beam={beam} window={window} zone={zone} />
          ))}
        </Cursor>
        {shown.length === 0 && <p class="empty">Every beam is switched off above.</p>}
      </div>
      <ZoomButtons desk={desk} reading={reading} window={window} />
      <ChosenFinding desk={desk} reading={reading} />
      <p class="key">
        Bars name the findings, numbered as in the list: <b>act</b> is solid, <b>watch</b> hatched, <b>note</b> open.
        The narrow bars under them are what equipment with these thresholds and delays would have signalled: fire or
        fault.{' '}
        {reading.events.length > 0 &&
          'Marks at the top are the panel’s own list: a filled triangle is fire, a diamond fault, a ring reset. '}{' '}
        The dashed line is the alarm threshold, the dotted one that of a blocked beam. Stretches of more than five
        intervals without samples are left open. Each line holds the least and the greatest sample of up to 2,000
        stretches: no dip is lost
        <span data-screen>, and it is drawn afresh at every zoom. Click a place to ask “why then?” below</span>.
      </p>
      <SignalTable log={log} beams={shown} window={window} scale={settings.scale} />
    </>
  );
}

/** One beam for each temperature column in use. */
function temperatures({ reading }: OpenLog, shown: readonly string[]): string[] {
  const columns = new Map<string, string>();
  for (const { id, hasTemperature } of reading.beams) {
    const column = reading.site.beams.find((beam) => beam.id === id)?.temperatureColumn ?? '';
    if (hasTemperature && shown.includes(id) && !columns.has(column)) columns.set(column, id);
  }
  return [...columns.values()];
}
