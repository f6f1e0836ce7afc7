/** The beam that a proof sheet names; null where the text is none. Whether the sheet can be used is not asked here. */
export function beamOfSheet(text: string): string | null {
  try {
    const json: unknown = JSON.parse(text);
    const { beam } = (typeof json === 'object' && json !== null ? json : {}) as { beam?: unknown };
    return typeof beam === 'string' ? beam : null;
  } catch {
    return null;
  }
}
