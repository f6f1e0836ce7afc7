/*
 * Whether something lies amid its like, or stands out among them: of a size that hardly any of many reaches, or at hours
 * before or after all of theirs. What stands out is not explained by them.
 */

/** Of so many others or more, so many must be no smaller than this share. Own choice. */
const many = 12;
const leastAsLarge = 2;
const asLarge = 0.7;

/**
 * Hours by which something may come before the earliest of its like, or after the latest; of few others, so many times what
 * lies between two of them, since few do not show how early work may begin. Own choice.
 */
const hoursBeyond = 0.5;
const gapsBeyond = 3;

/** Whether another is as large, from the natural logs of both. */
export const isAsLarge = (other: number, one: number): boolean => other - one >= Math.log(asLarge);

/** Whether something is larger than nearly all of its like. */
export const isOutlier = (others: number, asLarge: number): boolean => others >= many && asLarge < leastAsLarge;

/** Whether so many as large make sure that it is not, however many others there are. */
export const isNeverOutlier = (asLarge: number): boolean => asLarge >= leastAsLarge;

/** How much later than it others come [h]. */
export class Hours {
  #earliest = Number.POSITIVE_INFINITY;
  #latest = Number.NEGATIVE_INFINITY;
  #count = 0;

  add(later: number): void {
    this.#earliest = Math.min(this.#earliest, later);
    this.#latest = Math.max(this.#latest, later);
    this.#count++;
  }

  /** Whether they come about it, rather than all before or all after it; of none, they do not. */
  areAbout(): boolean {
    if (this.#count === 0) return false;
    const beyond = Math.max(hoursBeyond, (gapsBeyond * (this.#latest - this.#earliest)) / this.#count);
    return this.#areWithin(beyond);
  }

  /** Whether they come about it so clearly that no other changes it. */
  areClearlyAbout(): boolean {
    return this.#areWithin(hoursBeyond);
  }

  #areWithin(beyond: number): boolean {
    return this.#earliest <= beyond && this.#latest >= -beyond;
  }
}
