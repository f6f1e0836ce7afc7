import { useEffect, useState } from 'preact/hooks';

/** How it stands with a question to the bench. */
export type Answer<T> =
  | { readonly is: 'nothing' }
  | { readonly is: 'asking' }
  | { readonly is: 'told'; readonly told: T }
  | { readonly is: 'refused'; readonly why: string };

/**
 * The answer to a question that takes time, or why there is none.
 *
 * @param ask asks it; null where there is nothing to ask
 * @param on what the question depends on: it is asked again when one of these changes
 */
export function useAnswer<T>(ask: (() => Promise<T>) | null, on: readonly unknown[]): Answer<T> {
  const [answer, setAnswer] = useState<Answer<T>>({ is: 'nothing' });
  useEffect(() => {
    let outdated = false;
    setAnswer({ is: ask ? 'asking' : 'nothing' });
    void ask?.().then(
      (told) => !outdated && setAnswer({ is: 'told', told }),
      (error: unknown) => !outdated && setAnswer({ is: 'refused', why: (error as Error).message }),
    );
    return () => {
      outdated = true;
    };
  }, on);
  return answer;
}
