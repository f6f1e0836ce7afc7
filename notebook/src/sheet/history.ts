/*
 * Undo and redo over one list of immutable states. An edit cuts off what was undone; edits in a row that carry the
 * same mark (typing into one field) stand as one step.
 */

/** States in the order in which they came about, and the one in force. */
export interface History<S> {
  readonly states: readonly S[];
  /** Row of the state in force. */
  readonly at: number;
  /** Mark of the edit that made the state in force. */
  readonly mark?: string;
}

/** How many steps are kept. */
export const stepsKept = 200;

/** A history that begins with this state. */
export const begun = <S>(state: S): History<S> => ({ states: [state], at: 0 });

/** The state in force. */
export const present = <S>({ states, at }: History<S>): S => states[at] as S;

/**
 * The history after an edit.
 *
 * @param history the history so far
 * @param state the new state; the very same object means that nothing was done
 * @param mark edits in a row with the same mark become one step
 */
export function edited<S>(history: History<S>, state: S, mark?: string): History<S> {
  if (state === present(history)) return history;
  const joins = mark !== undefined && mark === history.mark;
  const before = history.states.slice(0, joins ? history.at : history.at + 1);
  const states = [...before, state].slice(-stepsKept);
  return { states, at: states.length - 1, ...(mark === undefined ? {} : { mark }) };
}

/** One step back, if there is one. */
export const undone = <S>({ states, at }: History<S>): History<S> => ({ states, at: Math.max(0, at - 1) });

/** One step forth, if there is one. */
export const redone = <S>({ states, at }: History<S>): History<S> => ({
  states,
  at: Math.min(states.length - 1, at + 1),
});

export const canUndo = <S>({ at }: History<S>): boolean => at > 0;
export const canRedo = <S>({ states, at }: History<S>): boolean => at < states.length - 1;
