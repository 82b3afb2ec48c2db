/** Steps that can be taken back. Keystrokes in one field are one step. */
export interface History<T> {
  readonly now: T;
  /** older ones first */
  readonly past: readonly Step<T>[];
  /** the field that the last change was typed into */
  readonly field?: string;
}

interface Step<T> {
  readonly before: T;
  /** what was done, for the undo button: a key of the words */
  readonly what: string;
}

const MOST_STEPS = 100;

export const begin = <T>(now: T): History<T> => ({ now, past: [] });

/** @param field names the field that was typed into; further typing there joins the step */
export function changed<T>(history: History<T>, now: T, what: string, field?: string): History<T> {
  if (now === history.now) return history;
  const joins = field !== undefined && field === history.field && history.past.length > 0;
  const past = joins ? history.past : [...history.past, { before: history.now, what }].slice(-MOST_STEPS);
  return { now, past, ...(field === undefined ? {} : { field }) };
}

export function undone<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  return last === undefined ? history : { now: last.before, past: history.past.slice(0, -1) };
}
