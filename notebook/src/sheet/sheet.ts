import { causeWords, severities } from 'beamkeep/diagnosis';
import { deflectionLimits, thermalExpansion } from 'beamkeep/numbers';
import * as v from 'valibot';

/*
 * The document: a title and cells that are read from top to bottom. A cell is a kind, its settings, and whether it is
 * folded. What a cell shows is computed from its settings and from the nearest log cell above it, and is not part of
 * the document.
 *
 * To add a kind: its settings here, its view in cells/, a line in cells/index.ts.
 */

/** What a level is drawn as: obscuration [%], share of clean air [%], or loss [dB]. */
export const scales = ['obscuration', 'level', 'loss'] as const;
export type Scale = (typeof scales)[number];

/** What a person says to a finding. */
export const verdicts = ['confirmed', 'rejected', 'relabelled'] as const;
export type Verdict = (typeof verdicts)[number];

/** The lessons, by the words for them in a saved sheet. */
export const lessonWords = [
  'two-paths',
  'flank-under-hot-roof',
  'dirt-eating-margin',
  'delay-against-fork-lift',
  'high-hall',
] as const;
export type LessonWord = (typeof lessonWords)[number];

const keysOf = <T extends Record<string, unknown>>(table: T) => Object.keys(table) as (keyof T & string)[];

/** Where the samples come from. Files are kept on the shelf under a key: see shelf.ts. */
const logFrom = v.variant('from', [
  v.strictObject({ from: v.literal('nothing') }),
  v.strictObject({ from: v.literal('demo') }),
  v.strictObject({ from: v.literal('shelf'), key: v.string(), names: v.array(v.string()) }),
]);
export type LogFrom = v.InferOutput<typeof logFrom>;

/** A small file, kept word for word. */
const smallText = v.strictObject({ name: v.string(), text: v.string() });
export type SmallText = v.InferOutput<typeof smallText>;

/** What holds a head, as typed; what is empty is not computed. */
const typedStructure = v.strictObject({
  /** Span and depth of the roof member [m], and how much warmer one face of it gets [K]. */
  span: v.string(),
  depth: v.string(),
  gradient: v.string(),
  roof: v.picklist(keysOf(deflectionLimits)),
  /** Height of the frame whose column holds the head [m]. */
  frame: v.string(),
  /** Length of a member that shifts one end sideways [m], and by how much it warms [K]. */
  member: v.string(),
  warming: v.string(),
  material: v.picklist(keysOf(thermalExpansion)),
});
export type TypedStructure = v.InferOutput<typeof typedStructure>;

/** Nothing is known of what holds a head. */
export const freshStructure: TypedStructure = {
  span: '',
  depth: '',
  gradient: '',
  roof: 'roofNoCeiling',
  frame: '',
  member: '',
  warming: '',
  material: 'steel',
};

/** Somebody who was told, and when: date and time on the clock of the site, as typed. */
const toldWhen = v.strictObject({ who: v.string(), time: v.string() });

const verdictOnFinding = v.strictObject({
  verdict: v.picklist(verdicts),
  /** The cause it should be, when relabelled. */
  cause: v.optional(v.picklist(causeWords)),
  note: v.string(),
});
export type VerdictOnFinding = v.InferOutput<typeof verdictOnFinding>;

/** Settings of each kind of cell. */
export const settingsOf = {
  note: v.strictObject({ text: v.string() }),
  log: v.strictObject({
    log: logFrom,
    site: v.nullable(smallText),
    /** The panel's list of what it signalled, kept word for word. */
    events: v.optional(v.nullable(smallText), null),
  }),
  signal: v.strictObject({
    scale: v.picklist(scales),
    /** Whether the axis reaches to the thresholds or just holds the data. */
    reach: v.picklist(['thresholds', 'data']),
    temperature: v.boolean(),
    /** Whether the states that the equipment would have signalled stand in the lanes. */
    states: v.optional(v.boolean(), true),
    /** Beams left out of the plot, by id; null leaves out none of a few and most of many. */
    without: v.nullable(v.array(v.string())),
  }),
  findings: v.strictObject({
    /** Findings of lesser severity are not listed. */
    least: v.picklist(severities),
    /** By `verdictKey` of the finding. */
    verdicts: v.record(v.string(), verdictOnFinding),
  }),
  why: v.strictObject({
    /** The time asked about, in words: "Tue 06:40"; empty: the moment last clicked in the plots. */
    at: v.string(),
    beam: v.nullable(v.string()),
  }),
  events: v.strictObject({}),
  margin: v.strictObject({}),
  fold: v.strictObject({ scale: v.picklist(scales), beam: v.nullable(v.string()) }),
  spectrum: v.strictObject({ beam: v.nullable(v.string()) }),
  units: v.strictObject({ value: v.string(), from: v.string(), to: v.string(), path: v.string() }),
  aim: v.strictObject({
    beam: v.nullable(v.string()),
    scan: v.nullable(smallText),
    /** Where the head was left [degrees], as typed. */
    left: v.string(),
    structure: v.optional(typedStructure, freshStructure),
  }),
  covered: v.strictObject({ beam: v.nullable(v.string()), test: v.nullable(smallText) }),
  proof: v.strictObject({
    beam: v.nullable(v.string()),
    /** The proof sheet (JSON); null is the usual steps of the beam. */
    sheet: v.nullable(smallText),
    test: v.nullable(smallText),
    /** The panel's own list of the day. */
    events: v.nullable(smallText),
    /** By how much the panel's clock runs ahead of the logger's [s], as typed. */
    clockOffset: v.string(),
    /** When steps were done, by their row in the sheet, as written down; empty where nothing was. */
    times: v.array(v.string()),
  }),
  /** What people write down on the commissioning day because no signal shows it; times on the clock of the site. */
  record: v.strictObject({
    date: v.string(),
    people: v.array(v.strictObject({ role: v.string(), name: v.string(), licence: v.string() })),
    /** From when to when the system was out of service. */
    from: v.string(),
    until: v.string(),
    told: v.array(toldWhen),
    /** The fire watch. */
    watch: v.strictObject({ by: v.string(), from: v.string(), until: v.string() }),
    /** When, and by whom, it was returned to service, and who was told. */
    returned: v.string(),
    returnedBy: v.string(),
    toldBack: v.array(toldWhen),
    /** A line each. */
    deviations: v.string(),
    notDone: v.string(),
    remarks: v.string(),
  }),
  thresholds: v.strictObject({}),
  plan: v.strictObject({
    length: v.string(),
    width: v.string(),
    height: v.string(),
    roof: v.picklist(['flat', 'pitched']),
    /** Height of the ridge of a pitched roof. */
    apex: v.string(),
    rules: v.string(),
  }),
  lesson: v.strictObject({
    lesson: v.picklist(lessonWords),
    /** By the name of the slider; what is not named is where the lesson begins. */
    values: v.record(v.string(), v.number()),
  }),
  tradeoff: v.strictObject({
    beam: v.nullable(v.string()),
    /** The hall [m, m2, K/m, K], as typed; an empty ceiling follows the highest beam. */
    ceiling: v.string(),
    area: v.string(),
    spacing: v.string(),
    gradient: v.string(),
    roofWarmer: v.string(),
    diameter: v.string(),
    /** Fires to be found, by their short names. */
    fires: v.array(v.string()),
    /** The setting that is tried [%, s]; null is the one that the site has. */
    threshold: v.nullable(v.number()),
    delay: v.nullable(v.number()),
  }),
  compare: v.strictObject({
    /** Log cells, by id; null are the two nearest above. */
    before: v.nullable(v.string()),
    after: v.nullable(v.string()),
    beam: v.nullable(v.string()),
    /** How many days of either log are compared, as typed. */
    days: v.string(),
  }),
  cautions: v.strictObject({}),
} as const;

/** The word for a kind of cell in a saved sheet; never renamed. */
export type Kind = keyof typeof settingsOf;
export type Settings = { readonly [K in Kind]: v.InferOutput<(typeof settingsOf)[K]> };

/** A cell of one kind, or of any. */
export type Cell<K extends Kind = Kind> = {
  readonly [P in K]: {
    /** Name of the cell within its sheet. */
    readonly id: string;
    readonly kind: P;
    readonly folded: boolean;
    readonly settings: Settings[P];
  };
}[K];

/** The document. */
export interface Sheet {
  readonly title: string;
  readonly cells: readonly Cell[];
}

/** Settings of a new cell. */
export const freshSettings: Settings = {
  note: { text: '' },
  log: { log: { from: 'nothing' }, site: null, events: null },
  signal: { scale: 'obscuration', reach: 'data', temperature: true, states: true, without: null },
  findings: { least: 'note', verdicts: {} },
  why: { at: '', beam: null },
  events: {},
  margin: {},
  fold: { scale: 'obscuration', beam: null },
  spectrum: { beam: null },
  units: { value: '35', from: 'percent', to: 'decibels-per-metre', path: '100' },
  aim: { beam: null, scan: null, left: '', structure: freshStructure },
  covered: { beam: null, test: null },
  proof: { beam: null, sheet: null, test: null, events: null, clockOffset: '', times: [] },
  record: {
    date: '',
    people: [],
    from: '',
    until: '',
    told: [],
    watch: { by: '', from: '', until: '' },
    returned: '',
    returnedBy: '',
    toldBack: [],
    deviations: '',
    notDone: '',
    remarks: '',
  },
  thresholds: {},
  plan: { length: '60', width: '40', height: '12', roof: 'flat', apex: '16', rules: 'bs5839-1' },
  lesson: { lesson: 'two-paths', values: {} },
  tradeoff: {
    beam: null,
    ceiling: '',
    area: '1860',
    spacing: '15',
    gradient: '0',
    roofWarmer: '0',
    diameter: '0.5',
    fires: ['medium:wood', 'fast:polyurethaneFoam'],
    threshold: null,
    delay: null,
  },
  compare: { before: null, after: null, beam: null, days: '30' },
  cautions: {},
};

/** A new cell of a kind, under an id of its own. */
export const freshCell = <K extends Kind>(kind: K, settings: Settings[K] = freshSettings[kind]): Cell<K> =>
  ({ id: newId(), kind, folded: false, settings }) as Cell<K>;

/** A short name that no other cell has. */
export function newId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(6)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** A sheet with a log cell that shows the demo, or none. */
export const freshSheet = (log: LogFrom = { from: 'nothing' }): Sheet => ({
  title: 'Worksheet',
  cells: [
    freshCell('log', { log, site: null, events: null }),
    freshCell('signal'),
    freshCell('why'),
    freshCell('findings'),
    freshCell('margin'),
    freshCell('fold'),
    freshCell('units'),
    freshCell('cautions'),
  ],
});
