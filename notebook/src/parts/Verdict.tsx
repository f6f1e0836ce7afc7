import { typeset } from '../words/typeset.js';

interface VerdictProps {
  readonly beam: string;
  /** The verdict as one word or two. */
  readonly verdict: string;
  readonly sentences: readonly string[];
  readonly actions: readonly string[];
}

/** An answer of the commissioning day: verdict, what was found, what to do. */
export function Verdict({ beam, verdict, sentences, actions }: VerdictProps) {
  return (
    <>
      <p class="answer">
        Beam {beam}: <b>{verdict}.</b> {typeset(sentences.join(' '))}
      </p>
      {actions.length > 0 && (
        <dl class="advice">
          <dt>Do</dt>
          <dd>{typeset(actions.join(' '))}</dd>
        </dl>
      )}
    </>
  );
}
