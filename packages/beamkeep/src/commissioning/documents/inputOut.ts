/** What was read, and what had to be mended or dropped: as every answer tells it. */
export interface InputOut {
  /** Lines read, headers included. */
  readonly lines: number;
  readonly dropped: number;
  readonly notes: readonly {
    readonly line: number;
    readonly lines: number;
    readonly what: string;
    readonly file?: string;
  }[];
}
