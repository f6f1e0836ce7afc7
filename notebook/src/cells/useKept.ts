import { useRef } from 'preact/hooks';
import type { Answer } from './useAnswer.js';

/**
 * The last answer for as long as the next one is asked for: what is being typed in does not vanish with it.
 *
 * @param answer how it stands
 */
export function useKept<T>(answer: Answer<T>): Answer<T> {
  const last = useRef(answer);
  if (answer.is !== 'asking') last.current = answer;
  return answer.is === 'asking' && last.current.is === 'told' ? last.current : answer;
}
