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
 * @param pause how long nothing must change before it is asked [ms], so that it is not asked at every key
 */
export function useAnswer<T>(ask: (() => Promise<T>) | null, on: readonly unknown[], pause = 0): Answer<T> {
  const [answer, setAnswer] = useState<Answer<T>>({ is: 'nothing' });
  useEffect(() => {
    let outdated = false;
    setAnswer({ is: ask ? 'asking' : 'nothing' });
    const start = (): void =>
      void ask?.().then(
        (told) => !outdated && setAnswer({ is: 'told', told }),
        (error: unknown) => !outdated && setAnswer({ is: 'refused', why: (error as Error).message }),
      );
    let timer: ReturnType<typeof setTimeout> | undefined;
    if (pause > 0) timer = setTimeout(start, pause);
    else start();
    return () => {
      outdated = true;
      clearTimeout(timer);
    };
  }, on);
  return answer;
}
