/** One line of a fire panel's own list of what it signalled. */
export interface PanelEntry {
  /** Instant on the panel's clock [ms since 1970-01-01 UTC], which may run ahead of the log's or behind it. */
  readonly time: number;
  /** The beam's `id` in the site file; left out: all beams. */
  readonly beam?: string;
  /** What the panel said, as written: "fire", "fault", "reset", or its own words. */
  readonly what: string;
}
