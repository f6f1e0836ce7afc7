import type { Caution, Stage } from 'beamkeep/commissioning';

const headings = { before: 'Before the test', prove: 'What a test is worth', after: 'At the end' } as const;

/** What to mind at a stage of the test. */
export function Minded({
  cautions,
  stage,
}: {
  cautions: readonly Caution[];
  stage: Extract<Stage, 'before' | 'prove' | 'after'>;
}) {
  return (
    <div class={stage === 'before' ? 'minded minded-first' : 'minded'}>
      <h3>{headings[stage]}</h3>
      <ul>
        {cautions
          .filter((caution) => caution.stage === stage)
          .map(({ words }) => (
            <li key={words}>{words}</li>
          ))}
      </ul>
    </div>
  );
}
