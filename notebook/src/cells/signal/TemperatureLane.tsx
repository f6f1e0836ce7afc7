import { useCallback, useMemo } from 'preact/hooks';
import type { Window } from '../../bench/reading.js';
import type { SiteZone } from '../../bench/siteZone.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { temperatureFigure, temperatureHeight } from '../../plots/temperatureFigure.js';
import { siteDates } from '../../words/dates.js';
import { figure } from '../../words/numbers.js';
import { type OpenLog, wholeOf } from '../useLog.js';
import { kept } from './moveWindow.js';
import { useLine, valueAt } from './useLine.js';

interface TemperatureLaneProps {
  readonly log: OpenLog;
  readonly beam: string;
  readonly window: Window;
  readonly zone: SiteZone;
}

/** The temperature near the structure on the time axis of the beams. */
export function TemperatureLane({ log, beam, window, zone }: TemperatureLaneProps) {
  const { bench, desk } = log;
  const ask = useCallback((to: Window) => bench.temperature(beam, to, 1000), [bench, beam]);
  const { shown, failed } = useLine(ask, window);
  const draw = useMemo(
    () =>
      shown && ((width: number, colours: Palette) => temperatureFigure(shown.line, shown.window, zone, width, colours)),
    [shown, zone],
  );
  const at = desk.cursor.value;
  const value = at !== null && shown ? valueAt(shown.line, at) : Number.NaN;
  const dates = siteDates(zone.name);
  return (
    <div class="lane">
      <div class="lane-head">
        <b>temperature</b>
        <span>near the structure of {beam}</span>
        <span class="lane-value" data-screen>
          {Number.isNaN(value) ? '' : `${figure(value)} °C`}
        </span>
      </div>
      <Plot
        figure={draw}
        failed={failed}
        height={temperatureHeight}
        name={[log.reading.site.name, 'temperature', beam]}
        label={`Temperature near the structure of beam ${beam}, ${dates.stretch(window.from, window.to)}.`}
        onZoom={(from, to) => {
          desk.window.value = kept({ from: zone.instant(from), to: zone.instant(to) }, wholeOf(log.reading));
        }}
        onWhole={() => {
          desk.window.value = null;
        }}
      />
    </div>
  );
}
