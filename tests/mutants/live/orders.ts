import type { ReachedByFile } from '../reach.ts';

/** What the process is told that works tests (executor.ts starts it), and what it writes down, a line of JSON each. */

/** A test by its file and its number in it. */
export interface Step {
  readonly file: string;
  readonly test: number;
  /** what it took of the processor when its reach was found, ms */
  readonly ms: number;
}

/** A mutant, and which tests may find it. */
export interface Trial {
  readonly id: number;
  readonly source: string;
  /** tests that reach it only while they are worked: it can be switched on for them alone */
  readonly steps: readonly Step[];
  /** files that reach it while they are read: they are read anew with it, and all their tests worked */
  readonly fresh: readonly { readonly file: string; readonly steps: readonly Step[] }[];
}

export type Order =
  | (Common & { readonly kind: 'reach'; readonly files: readonly string[]; readonly marks: number })
  | OfMutants;

interface Common {
  readonly root: string;
  /** where what is found out is written down */
  readonly out: string;
}

export interface OfMutants extends Common {
  readonly kind: 'mutants';
  readonly trials: readonly Trial[];
  /** a process broke off with it before: it has one for itself */
  readonly alone?: true;
  /** those that were not found in time are tried once more, for longer */
  readonly longer?: true;
}

/** What became of a mutant: the test that turned red, or why nothing did. Where no test could tell, it is unknown. */
export type Fate =
  | { readonly killed: true; readonly by: string }
  | { readonly killed: false; readonly why: string; readonly unknown?: true; readonly late?: true };

/**
 * A line of what was found out. A mutant whose first tests stayed green waits for those that are read anew; one with
 * which the process broke off is tried again by itself.
 */
export type Line =
  | ({ readonly id: number; readonly ms: number } & (
      | Fate
      | { readonly waits: true }
      | { readonly brokeOff: true }
    ))
  | { readonly reached: ReachedByFile };
