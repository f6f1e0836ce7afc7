import type { CauseWord } from './finding.js';

/*
 * Causes that the received signal cannot always part, two by two: what makes them look alike, what to do on site, and
 * what each outcome looks like. Three rules run through the table:
 *
 * - Where one of the two is smoke, the test comes after the look: first it is fire, then it is a question.
 * - One thing at a time, the level noted after each: whoever wipes and turns at once has parted nothing.
 * - Wiping and drying touch the glass, turning touches the aim, shading touches the light from outside, covering takes
 *   the beam's own light: each changes one factor of the received level and leaves the others.
 *
 * The rules of thumb are common practice, no source; the physics behind them is told with each cause. To add a pair,
 * add a row; the first row that holds a cause is the one it is most often mistaken in.
 */

/** A cause, or a reading set anew by the equipment, which looks like one. */
export type Double = CauseWord | 'renormalised';

/** How to part two causes on site. */
export interface Parting {
  readonly pair: readonly [Double, Double];
  /** Why the signal may not part them. */
  readonly alike: string;
  /** What to do on site. */
  readonly test: string;
  /** What it looks like when it is the first of the pair, and when it is the second. */
  readonly outcomes: readonly [string, string];
}

/** Holds for every test on site, and is said once where tests are told. */
export const beforeTests =
  'Before any test take the beam out of service and tell those who monitor it; afterwards prove fire and fault again at both ends.';

/** A test that comes after the look. */
const fireFirst = (test: string): string =>
  `Treat it as fire first: go and look, at once or as soon as you read this. ${test}`;

const table = (): readonly Parting[] => [
  {
    pair: ['process-aerosol', 'smoke-like'],
    alike: 'Dust, steam, fumes and smoke take light in the same way: nothing in the level of one dip parts them.',
    test: fireFirst(
      `When all is safe, watch the next such work with the log running, or have it left out for a day, and ask what burned, was welded or cut at that time.`,
    ),
    outcomes: [
      'The dips come with the work, alike in size and length, and stay away without it: extract at the source or move the beam. A higher threshold would hide a fire that starts in that work.',
      'It came without the work, grew past its usual size, or someone saw, smelt or found burning: it was a fire.',
    ],
  },
  {
    pair: ['obstruction', 'smoke-like'],
    alike: 'An object takes a beam within two seconds; dense smoke near a long beam needs hardly more.',
    test: fireFirst(
      `Look along the whole path and at the ceiling. When all is safe, hold a board in the path where something passes and compare its edges with those in the log, sampled each second or faster.`,
    ),
    outcomes: [
      'Edges within two seconds, a bottom as steady as clean air, and all of the light back once the object is gone; the diary or a camera shows what it was.',
      'The loss grew over several samples before it was deep, wavered at the bottom or cleared over minutes, and no object is found: it counts as fire.',
    ],
  },
  {
    pair: ['contamination', 'misalignment-drift'],
    alike: 'Both take light slowly, over weeks to months, and both may be at work.',
    test: 'Wipe the reflector, then the optics, moving neither, and note the level before and after each. Only then turn the head to the peak and note it again.',
    outcomes: [
      'Most of the loss comes back on wiping, and the peak lies where the head pointed.',
      'Wiping gives back little; the level rises as the head is turned. Find the fixing or the member that gives way, mark the head against its bracket and compare in a month.',
    ],
  },
  {
    pair: ['misalignment-step', 'obstruction'],
    alike: 'Both take a part of the light from one sample to the next and keep it.',
    test: 'Look along the path from the receiver to the far end and hold a card in its edges. Then turn the head to the peak, noting the level before and after.',
    outcomes: [
      'The path is free. The level comes back as the head or the reflector is turned, and a bracket or a fixing tells of the knock; the daily sway has often grown since.',
      'Something stands in the path or reaches into its edge: the level comes back to where it was when that is moved, the aim untouched.',
    ],
  },
  {
    pair: ['condensation', 'process-aerosol'],
    alike: 'Both are partial dips of an hour or more that come again, and steam from work is both at once.',
    test: 'At the hour of the dips look at the glass of both ends with a lamp, and at the air between. Note temperature and humidity beside the optics.',
    outcomes: [
      'A film on cold glass: the level returns as it is dried. It comes on days without work too.',
      'Dry glass, and something hanging in the air: the dips come with the work alone.',
    ],
  },
  {
    pair: ['building-movement', 'condensation'],
    alike: 'Both are smooth losses of hours that come with cool nights and go as it warms.',
    test: 'In the coldest hour look at both ends for a film. Then turn the head a little to either side, noting the level, and do the same at noon.',
    outcomes: [
      'Dry glass, and the peak has gone to another place: the level rises as the head is turned. The sway comes on dry nights too and follows the temperature of the structure.',
      'A film: the level comes back as it is dried, and the peak has kept its place. Dry nights pass without it.',
    ],
  },
  {
    pair: ['ambient-light', 'electrical-noise'],
    alike:
      'Both roughen the samples, upwards as well as downwards, and leave the middle of the level nearly as it was.',
    test: 'While it lasts, cover the receiver for a minute so that no light enters. Then shade it from the side only, the path left free. On another day feed it from a battery.',
    outcomes: [
      'Covered, it is quiet; shaded from the side, the beam is calm. It keeps to the hours of the sun or of a lamp.',
      'Covered, it goes on: no light, yet noise. A battery calms it; it keeps to what is switched, by night too.',
    ],
  },
  {
    pair: ['vibration', 'electrical-noise'],
    alike: 'Both widen the spread of the samples while plant runs, and slow sampling hides the line of a vibration.',
    test: 'While the plant runs, sample at 20 Hz or more for some minutes, lay a hand on the mount, then cover the receiver for a minute.',
    outcomes: [
      'The hand feels it and damps it; the spectrum shows a narrow line, at twice the frequency of the machine where the aim is centred; covered, it is gone.',
      'The hand changes nothing; the spectrum is broad, or its lines are those of the mains; covered, it goes on.',
    ],
  },
  {
    pair: ['building-movement', 'ambient-light'],
    alike:
      'Both change the level at hours that belong to the sun, and both fail to come on dull days; a load and a lamp may both raise it at once.',
    test: 'On a clear day at that hour shade the window, or the receiver from the side with the path left free, for ten minutes.',
    outcomes: [
      'The level keeps its course under the shade: the change takes hours, lags behind the sun and follows the temperature of the structure, or it comes and goes with a load.',
      'The change goes with the shade and comes back without it; it may pass clean air, and its hour moves with the season.',
    ],
  },
  {
    pair: ['contamination', 'building-movement'],
    alike: 'A season that turns warmer or colder bends the structure for weeks, as slowly as dirt gathers.',
    test: 'Clean both ends, moving neither, and note the level before and after within the hour. Then compare days of the same temperature, a month or more apart.',
    outcomes: [
      'The level steps up on cleaning and stays up; days of the same temperature had lost light from one to the next.',
      'Cleaning gives back little; days of the same temperature stand at the same level, and the loss goes back by itself as the season turns.',
    ],
  },
  {
    pair: ['misalignment-drift', 'building-movement'],
    alike: 'An aim that creeps and a season that bends the structure both lose ever more, and sway more as they lose.',
    test: 'Mark the head against its bracket and the bracket against the structure. Read the peak now and on days of the same temperature, a month and a season later.',
    outcomes: [
      'At the same temperature the peak lies further off each time, or the marks have moved against each other: something gives way.',
      'At the same temperature the peak lies in the same place and the marks have kept together: the structure moves and comes back. Aim for the middle of its movement.',
    ],
  },
  {
    pair: ['contamination', 'misalignment-step'],
    alike: 'Work overhead may drop its dust on the glass and knock the head within the same hour.',
    test: 'Wipe the reflector, then the optics, moving neither, and note the level before and after each. Only then turn the head to the peak and note it again.',
    outcomes: [
      'The step is undone by wiping, and the sway in dB is what it was before the step.',
      'Wiping gives back little and turning the head nearly all; a sway that has grown over the step proves the lost aim.',
    ],
  },
  {
    pair: ['condensation', 'smoke-like'],
    alike: 'Mist that forms quickly grows as a smouldering fire does, over minutes to an hour.',
    test: fireFirst(
      `When all is safe, look at the glass in the coldest hour of the next such night, and log temperature and humidity beside the optics.`,
    ),
    outcomes: [
      'A film that dries as the level returns, on nights near the dew point, at about the same hour each time: warm or screen the optics.',
      'Dry glass, an air far from the dew point, or an hour that fits no cooling: it counts as smoke.',
    ],
  },
  {
    pair: ['misalignment-step', 'smoke-like'],
    alike: 'Smoke that hangs beneath the roof takes a part of the light and keeps it, as a knock does.',
    test: fireFirst(`When all is safe and the level is still low, look along the path and turn the head to the peak.`),
    outcomes: [
      'It fell from one sample to the next and stood steady from then on; it comes back as the head is turned, and only then.',
      'It grew over several samples and wavered; it comes back with the air, and nobody touched an end of the beam.',
    ],
  },
  {
    pair: ['ambient-light', 'smoke-like'],
    alike: 'Low sun that saturates the receiver takes the level down within minutes.',
    test: fireFirst(`When all is safe, shade the window on the next clear day at that solar hour.`),
    outcomes: [
      'With the shade the level keeps its course; without it the dip comes again at its solar hour, and never on dull days.',
      'It comes in spite of the shade, on a dull day, or at an hour without sun or lamp in view: it counts as smoke.',
    ],
  },
  {
    pair: ['obstruction', 'process-aerosol'],
    alike: 'Sampled each minute, something that passes and a puff from work are both a dip of a sample or two.',
    test: 'Sample each second or faster for some days of work, and look along the path while the dips come.',
    outcomes: [
      'Sharp edges and a flat bottom; something crosses the path: move it, or move the beam.',
      'A ragged rise and a slow clearing; nothing crosses, but something hangs in the air.',
    ],
  },
  {
    pair: ['building-movement', 'process-aerosol'],
    alike: 'A crane, a door or a loaded floor moves the structure in the same hours in which work makes dust.',
    test: 'Run the crane, the door or the load without the dusty work, then the work without them, with samples each second.',
    outcomes: [
      'The level moves with the load, smoothly and by the same amount each time, in clear air.',
      'The level dips with the work, raggedly and by another amount each time, wherever the load stands.',
    ],
  },
  {
    pair: ['vibration', 'ambient-light'],
    alike: 'Lamps fed from the mains ripple, and slow sampling turns ripple and vibration into the same slow swing.',
    test: 'While it lasts, cover the far end of the beam for a minute, the receiver left free. Then switch the lamps off.',
    outcomes: [
      'With the far end covered it is gone; the lamps change nothing.',
      'With the far end covered it goes on; it ends with the lamps.',
    ],
  },
  {
    pair: ['cleaned', 'renormalised'],
    alike: 'Glass that is wiped and a reading that is set anew both step up to about clean air and stay there.',
    test: "Ask the log book, and the equipment for its gain or reference before and after that minute. Then read the level with the far end covered and compare with the site's covered reading.",
    outcomes: [
      'Somebody was at the glass; gain and covered reading are what they were: the light itself has come back.',
      'The gain or the reference changed in that minute, and the covered reading rose by the same factor: the dirt is still there and the margin is smaller than the reading says. Clean, then set the clean-air reading anew.',
    ],
  },
  {
    pair: ['cleaned', 'obstruction'],
    alike: 'An object that leaves the edge of the path gives its light back in one step, and for good.',
    test: 'Ask who was at either end, or moved something beneath the beam, at that minute. Look back to where the loss began.',
    outcomes: [
      'Somebody cleaned or re-aimed, or it rained on an outdoor reflector; the loss before had gathered over weeks.',
      'The loss before had come in one step too, and the level is back exactly where it stood before that.',
    ],
  },
  {
    pair: ['data-gap', 'electrical-noise'],
    alike: 'A failing supply or cable stops a logger, holds its last value and roughens what is left.',
    test: "Compare the logger's own record of its supply with the times, move each connector while it runs, and read the beam's output with another meter.",
    outcomes: [
      'The other meter shows an ordinary level while the log stands still: the logger or its cable is at fault.',
      'The other meter shows the same roughness: supply, earthing or screening of the beam itself.',
    ],
  },
];

/** Pairs of causes that look alike, each with the way to part them: left out of a bundle that asks for none. */
export const partings: readonly Parting[] = /* @__PURE__ */ table();

/** The way to part two causes; undefined where the signal is not known to confuse them. The order does not matter. */
export const partingOf = (one: Double, other: Double): Parting | undefined =>
  partings.find(({ pair }) => one !== other && pair.includes(one) && pair.includes(other));

/** The pairs in which a cause is mistaken, the most usual first. */
export const partingsWith = (cause: Double): readonly Parting[] => partings.filter(({ pair }) => pair.includes(cause));
