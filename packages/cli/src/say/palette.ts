import picocolors from 'picocolors';

/** How weight is shown: by colour where it may be used, by nothing where not; words carry the meaning by themselves. */
export interface Palette {
  act(text: string): string;
  watch(text: string): string;
  note(text: string): string;
  strong(text: string): string;
  faint(text: string): string;
}

export function palette(colour: boolean): Palette {
  const { bold, cyan, dim, red, yellow } = picocolors.createColors(colour);
  return {
    act: (text) => bold(red(text)),
    watch: yellow,
    note: cyan,
    strong: bold,
    faint: dim,
  };
}
