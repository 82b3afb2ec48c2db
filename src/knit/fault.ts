import type { CourseFaults } from './faults/course-faults.ts';
import type { DraftFaults } from './faults/draft-faults.ts';
import type { PatternFaults } from './faults/pattern-faults.ts';
import type { RecipeFaults } from './faults/recipe-faults.ts';
import type { RowFaults } from './faults/row-faults.ts';
import type { ValueOf } from './faults/units.ts';

/**
 * Every fault by its code, with the names of its figures; the end of a name is its unit (`src/knit/faults/units.ts`).
 * The store adds its own (`src/store/faults.ts`). Sentences are made in `src/words`.
 */
export interface FaultFigures extends RowFaults, RecipeFaults, CourseFaults, PatternFaults, DraftFaults {}

export type FaultCode = keyof FaultFigures;

export type FiguresOf<Code extends FaultCode> = {
  readonly [Name in FaultFigures[Code]]: ValueOf<Name>;
};

/** A refusal is data: what is wrong (`code`), where (`at`), with which figures. */
export type FaultOf<Code extends FaultCode> = {
  [C in Code]: { readonly code: C; readonly at: Where; readonly figures: FiguresOf<C> };
}[Code];

export type Fault = FaultOf<FaultCode>;

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

/** What a fault is made with: nothing but its code (and place) where it has no figures. */
export type FaultArgs<Code extends FaultCode> = [FaultFigures[Code]] extends [never]
  ? [figures?: Readonly<Record<string, never>>, at?: Where]
  : [figures: FiguresOf<Code>, at?: Where];

export function fault<Code extends FaultCode>(
  code: Code,
  ...[figures = {}, at = {}]: FaultArgs<Code>
): FaultOf<Code> {
  return { code, at, figures } as unknown as FaultOf<Code>;
}

/** The same fault, placed more exactly (the outer caller knows the piece, the inner one the row). */
export const placed = <F extends Fault>(f: F, at: Where): F => ({ ...f, at: { ...at, ...f.at } });
