/** What was asked, where the fields that say so are left out: on paper and in a report. A value of no text is not told. */
export function Asked({ of }: { of: readonly (readonly [name: string, value: string])[] }) {
  const told = of.filter(([, value]) => value !== '').map(([name, value]) => `${name}: ${value}`);
  return told.length > 0 ? <p class="key asked on-paper">{told.join('; ')}.</p> : null;
}
