/**
 * A refusal is data: what is wrong (`code`), where (`at`), with which figures.
 * `sentence` says it in plain English; `src/words` says it in the knitter's language
 * from the same code and figures.
 */
export interface Fault {
  readonly code: string;
  readonly at: Where;
  readonly figures: Readonly<Record<string, number | string>>;
  readonly sentence: string;
}

/** The place in a recipe (or a text) that a fault speaks of; numbers count from 1 unless named index. */
export interface Where {
  readonly piece?: string;
  readonly part?: string;
  readonly sectionIndex?: number;
  readonly row?: number;
  /** Which field of the recipe: 'cast on', 'rows', 'shaping 2' ... */
  readonly field?: string;
  readonly line?: number;
  readonly column?: number;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });

export const refuse = <T = never>(...faults: readonly Fault[]): Result<T> => ({ ok: false, faults });

/** Makes a fault; `sentence` may hold `{name}` for any of the figures. */
export function fault(
  code: string,
  sentence: string,
  figures: Readonly<Record<string, number | string>> = {},
  at: Where = {},
): Fault {
  return { code, at, figures, sentence: fill(sentence, figures) };
}

/** The same fault, placed more exactly (the outer caller knows the piece, the inner one the row). */
export const placed = (f: Fault, at: Where): Fault => ({ ...f, at: { ...at, ...f.at } });

export const fill = (text: string, figures: Readonly<Record<string, number | string>>): string =>
  text.replace(/\{(\w+)\}/g, (whole, name: string) => String(figures[name] ?? whole));
