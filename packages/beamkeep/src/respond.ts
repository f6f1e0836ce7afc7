import { type BeamFacts, type InputReport, type LogSources, type ReadOptions, readBeams } from './log/index.js';
import {
  type BeamMemory,
  beamResponder,
  type Change,
  type DetectorState,
  type ResponseOptions,
  readingObscuration,
  resetsOf,
  slowGainOf,
} from './response/index.js';
import { bearsOnResponse, type Site } from './site/index.js';

/** A change of state, as the JSON output has it. */
export interface ChangeJson {
  /** ISO 8601 in UTC. */
  readonly time: string;
  readonly state: DetectorState;
}

/** What one beam's equipment would have signalled. */
export interface BeamResponseJson {
  readonly id: string;
  /** The state at the first sample, then every change; empty where the log holds no usable sample of the beam. */
  readonly changes: readonly ChangeJson[];
  /** Defaults in use that bear on the decision. */
  readonly assumed: readonly string[];
  /** What a reader must know of this answer; left out where there is nothing. */
  readonly notes?: readonly string[];
}

/** What the equipment would have signalled, ready for `JSON.stringify`. */
export interface ResponseJson {
  readonly format: 'beamkeep-response/1';
  readonly beams: readonly BeamResponseJson[];
  readonly input: InputReport;
}

/**
 * Reads a log and tells what equipment with the site's thresholds and delays would have signalled: every sample is
 * looked at, none is condensed.
 *
 * @param sources the log, one file or several
 * @param site the site, from `parseSite`
 * @param options progress and cancelling; `compensate` asks for a model of the equipment's slow gain, for a log of the
 *   light before that gain
 * @returns the changes of state of each beam, in the order of the site
 * @throws UsageError where the log cannot be used, naming file, line or column
 * @example (await respond(logOfText(csv), parseSite(json))).beams[0]?.changes
 */
export async function respond(
  sources: LogSources,
  site: Site,
  options: ReadOptions & ResponseOptions = {},
): Promise<ResponseJson> {
  const beams = new Map<string, BeamResponseJson>();
  const input = await readBeams(
    sources,
    site,
    (facts) => {
      const { id } = facts.beam;
      const changes: Change[] = [];
      const circumstances = {
        sampling: site.sampling,
        intervalSeconds: facts.intervalSeconds,
        resets: resetsOf(site.visits, id),
      };
      const response = beamResponder(facts.beam, circumstances, (change) => changes.push(change), options);
      const obscuration = readingObscuration(facts.beam);
      return {
        rows(time, readings, count) {
          for (let row = 0; row < count; row++)
            response.feed(time[row] as number, obscuration(readings[row] as number));
        },
        end(lastTime) {
          response.advance(lastTime);
          beams.set(id, beamJson(facts, changes, response.memory(), options));
        },
      };
    },
    options,
  );
  return { format: 'beamkeep-response/1', beams: site.beams.flatMap(({ id }) => beams.get(id) ?? []), input };
}

const iso = (instant: number): string => new Date(instant).toISOString();

function beamJson(
  { beam, assumed }: BeamFacts,
  changes: readonly Change[],
  memory: BeamMemory,
  options: ResponseOptions,
): BeamResponseJson {
  const notes = notesOf(memory);
  const gain = slowGainOf(beam, options);
  return {
    id: beam.id,
    changes: changes.map(({ time, state }) => ({ time: iso(time), state })),
    assumed: [
      ...beam.assumed.filter(bearsOnResponse),
      ...assumed,
      ...(gain && beam.compensation === 'unknown'
        ? [`compensation up to ${gain.limitDecibels.toFixed(2)} dB, the most that standards allow (from memory)`]
        : []),
    ],
    ...(notes.length > 0 && { notes }),
  };
}

function notesOf({ decision: { block } }: BeamMemory): string[] {
  if (block.unshownSteps === 0) return [];
  const times = block.unshownSteps === 1 ? 'once' : `${block.unshownSteps} times`;
  return [
    `${times} the loss became total between two samples more than 2 s apart (first at ${iso(block.firstUnshownStep)}): ` +
      'whether it was fast enough for a blocked beam cannot be shown, so it counts as any other loss and leads to fire',
  ];
}
