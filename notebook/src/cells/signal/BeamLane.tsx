import { useCallback, useMemo } from 'preact/hooks';
import type { BeamReading, Line, NumberedFinding, Signalled, Window } from '../../bench/reading.js';
import type { SiteZone } from '../../bench/siteZone.js';
import type { Lane } from '../../plots/lane.js';
import { nameOnBar } from '../../plots/laneBars.js';
import { laneFigure, laneHeight } from '../../plots/laneFigure.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { rowsOf, strips } from '../../plots/strips.js';
import type { Scale, Settings } from '../../sheet/sheet.js';
import { siteDates } from '../../words/dates.js';
import { figure } from '../../words/numbers.js';
import { type OpenLog, wholeOf } from '../useLog.js';
import { laneName } from './laneName.js';
import { kept } from './moveWindow.js';
import { type ShownLine, useLine, valueAt } from './useLine.js';

/** Most rows of findings in a lane of the page, and of a picture by itself, in which nobody can zoom. */
const mostRows = { page: 5, alone: 9 };

/** Most stretches of least and greatest in a line. */
const mostBuckets = 2000;

/** As many as the lane has dots across: more cannot be seen, and cost as much to draw. */
const bucketsFor = (width: number): number =>
  Math.min(mostBuckets, Math.max(500, 100 * Math.ceil((width * devicePixelRatio) / 100)));

export const scaleUnit: Readonly<Record<Scale, string>> = { obscuration: '%', level: '%', loss: 'dB' };

/** A line on the scale that it was asked for: it stays on its own until that of another scale is there. */
interface ScaledLine extends Line {
  readonly scale: Scale;
}

/** Whether a line is the one of this window and scale. */
const answers = ({ line, window }: ShownLine<ScaledLine>, { from, to }: Window, scale: Scale): boolean =>
  line.scale === scale && window.from === from && window.to === to;

interface BeamLaneProps {
  readonly log: OpenLog;
  readonly beam: BeamReading;
  readonly settings: Settings['signal'];
  readonly window: Window;
  readonly whole: Window;
  readonly zone: SiteZone;
  readonly width: number;
  readonly lowest: boolean;
}

/** One beam: its name and the value under the cursor, and its plot. */
export function BeamLane({ log, beam, settings, window, whole, zone, width, lowest }: BeamLaneProps) {
  const { desk, bench, reading } = log;
  const { scale, reach } = settings;
  const site = reading.site.beams.find(({ id }) => id === beam.id);
  const buckets = bucketsFor(width);
  const ask = useCallback(
    async (to: Window): Promise<ScaledLine> => ({ ...(await bench.level(beam.id, to, buckets, scale)), scale }),
    [bench, beam.id, buckets, scale],
  );
  const look = useCallback(
    async (to: Window): Promise<ScaledLine | null> => {
      const line = await bench.closer(beam.id, to, buckets, scale);
      return line && { ...line, scale };
    },
    [bench, beam.id, buckets, scale],
  );
  const { shown: coarse, failed } = useLine(ask, window);
  const { shown: fine } = useLine(look, window);
  const shown = fine && coarse && answers(fine, coarse.window, coarse.line.scale) ? fine : coarse;
  const chosen = desk.chosen.value;
  const mine = beam.findings.some(({ number }) => number === chosen) ? chosen : null;
  const told = settings.states ? desk.signalled.value : null;
  const signalled = told?.find(({ id }) => id === beam.id)?.stretches ?? null;
  const { from, to } = whole;
  // As many rows as the whole log needs: the lane keeps its height when one zooms in.
  const rowsAt = useCallback(
    (wide: number, most: number) => rowsOf(strips(beam.findings, { from, to }, roomFor({ from, to }, wide), most)),
    [beam, from, to],
  );
  const rowsHere = useMemo(() => rowsAt(width, mostRows.page), [rowsAt, width]);
  const statesRow = signalled && signalled.length > 0 ? 1 : 0;
  const picture = useCallback(
    (
      { line, window: inSight }: ShownLine<ScaledLine>,
      wide: number,
      colours: Palette,
      { axis, most }: { readonly axis: boolean; readonly most: number },
    ) => {
      const rows = rowsAt(wide, most);
      const lane: Lane = {
        line,
        window: inSight,
        scale: line.scale,
        reach,
        alarmThreshold: site?.alarmThreshold ?? Number.NaN,
        faultThreshold: site?.faultThreshold ?? Number.NaN,
        strips: strips(beam.findings, inSight, roomFor(inSight, wide), rows),
        rows: rows + statesRow,
        chosen: mine,
        signalled,
        events: reading.events.filter(({ beam: of }) => of === null || of === beam.id),
        zone,
        lowest: axis,
        steps: reading.site.sampling === 'on-change',
      };
      return laneFigure(lane, wide, colours);
    },
    [reach, site, beam, rowsAt, statesRow, mine, signalled, zone, reading],
  );
  const [draw, alone] = useMemo(
    () =>
      [
        { axis: lowest, most: mostRows.page },
        { axis: true, most: mostRows.alone },
      ].map((how) => shown && ((wide: number, colours: Palette) => picture(shown, wide, colours, how))),
    [shown, picture, lowest],
  );
  const late = shown && !answers(shown, window, scale);
  const at = desk.cursor.value;
  const value = at !== null && shown ? valueAt(shown.line, at) : Number.NaN;
  const dates = siteDates(zone.name);

  return (
    <div class="lane" data-lane={laneName(desk, beam.id)}>
      <div class="lane-head">
        <b>{beam.id}</b>
        {site && (
          <span>
            {site.layout === 'reflective' ? 'reflective' : 'end to end'}, {figure(site.separation)} m
          </span>
        )}
        {late && (
          <span class="coming" data-screen>
            {failed ? 'The line asked for could not be made.' : 'The line asked for is on its way …'}
          </span>
        )}
        <span class="lane-value" data-screen>
          {at !== null &&
            shown &&
            `${dates.moment(at)}: ${Number.isNaN(value) ? 'no sample' : `${figure(value)} ${scaleUnit[shown.line.scale]}`}`}
        </span>
      </div>
      <Plot
        figure={draw}
        failed={failed}
        alone={alone}
        height={laneHeight(rowsHere + statesRow, lowest)}
        name={[reading.site.name, 'signal', beam.id]}
        label={laneSentence(beam, window, dates, signalled)}
        onZoom={(from, to) => {
          desk.window.value = kept({ from: zone.instant(from), to: zone.instant(to) }, wholeOf(log.reading));
        }}
        onWhole={() => {
          desk.window.value = null;
        }}
        onChoose={(number) => {
          desk.chosen.value = number === chosen ? null : number;
          // Beside a bar, on its name, one means the bar.
          const finding = beam.findings.find((one) => one.number === number);
          const place = desk.asked.value;
          if (finding && place !== null) desk.asked.value = Math.max(finding.start, Math.min(finding.end, place));
        }}
      />
    </div>
  );
}

/** Room for a bar and its name in a lane of some width [px]. */
const roomFor =
  ({ from, to }: Window, width: number) =>
  (finding: NumberedFinding): number =>
    ((to - from) / Math.max(240, width - 70)) * (nameOnBar(finding).length * 7 + 16);

function laneSentence(
  beam: BeamReading,
  window: Window,
  dates: ReturnType<typeof siteDates>,
  signalled: readonly Signalled[] | null,
): string {
  const inSight = beam.findings.filter(({ start, end }) => start <= window.to && end >= window.from);
  const named = inSight.map(nameOnBar).join(', ');
  return (
    `Beam ${beam.id} from ${dates.stretch(window.from, window.to)}. ` +
    (named ? `Findings in sight: ${named}.` : 'No finding in sight.') +
    (signalled && signalled.length > 0 ? ` The equipment would have signalled ${signalled.length} times in all.` : '') +
    ' The same as numbers: in the table below the plots.'
  );
}
