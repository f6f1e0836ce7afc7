interface VerdictProps {
  /** The verdict as one word or two. */
  readonly verdict: string;
  readonly sentences: readonly string[];
  readonly actions: readonly string[];
}

/** An answer of the commissioning day: verdict, what was found, what to do. */
export function Verdict({ verdict, sentences, actions }: VerdictProps) {
  return (
    <>
      <p class="answer">
        <b>
          {verdict[0]?.toUpperCase()}
          {verdict.slice(1)}.
        </b>{' '}
        {sentences.join(' ')}
      </p>
      {actions.length > 0 && (
        <dl class="advice">
          <dt>Do</dt>
          <dd>{actions.join(' ')}</dd>
        </dl>
      )}
    </>
  );
}
