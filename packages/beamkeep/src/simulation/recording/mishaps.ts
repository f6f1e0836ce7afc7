import { random } from '../random.js';
import type { Scene } from '../scene.js';

/** What becomes of each line on its way into the file. */
export interface Mishaps {
  /** 1 where the line never reaches a reader whole: lost, or broken. */
  readonly gone: Uint8Array;
  /** 1 where the line is written, but broken. */
  readonly broken: Uint8Array;
  /** 1 where the line is written twice. */
  readonly doubled: Uint8Array;
  /** By how many lines it is written late. */
  readonly late: Uint8Array;
}

/** Draws the mishaps of a log. The first line is spared, so that a log begins where it says. */
export function mishaps({ scenario: { recording }, time, seed }: Scene): Mishaps {
  const draw = random(seed, 'mishaps');
  const row = () => new Uint8Array(time.length);
  const [gone, broken, doubled, late] = [row(), row(), row(), row()];
  const any = recording.lost + recording.broken + recording.doubled + recording.displaced > 0;
  for (let i = 1; any && i < time.length; i++) {
    if (draw.chance(recording.lost)) gone[i] = 1;
    else if (draw.chance(recording.broken)) [gone[i], broken[i]] = [1, 1];
    else if (draw.chance(recording.doubled)) doubled[i] = 1;
    else if (draw.chance(recording.displaced)) late[i] = draw.integer(1, 6);
  }
  return { gone, broken, doubled, late };
}
