import { type Fault, fault } from '../knit/fault.ts';

/**
 * Everything the store can refuse, by code; `src/words` has the knitter's sentence for each, and
 * the one here is for whoever reads this: it is in no script.
 * A refused change is not stored, in whole or in part: it can simply be tried again.
 */
export const storeFaults = {
  'storage-full': 'The phone has no room left. Nothing was changed. Free some space and try again.',
  'storage-refused': 'The browser does not let Ridgeline keep anything, as in a private window.',
  'store-not-answering': 'The browser has closed its storage. Nothing was changed. Reload and try again.',
  'database-newer':
    'This garment box was opened by a newer Ridgeline. It can be read and saved to a file only.',
  'database-blocked': 'Another open Ridgeline window is older. Close it and try again.',
  'database-strange': 'The storage of this address is not as Ridgeline made it. Nothing was touched.',
  'migration-failed': 'The garment box could not be brought up to date. It is as it was.',
  'not-storable': 'This cannot be stored ({detail}). Nothing was changed.',
  'no-such-garment': 'There is no such garment here.',
  'no-such-make': 'There is no such make here.',
  'no-such-plan': 'There is no such plan here.',
  'no-such-entry': 'There is no such entry in the log.',
  'app-incomplete': 'A part of the app could not be loaded. Nothing was changed. Reload and try again.',
  'plan-missing': 'Part {part} of a piece has no plan.',
  'at-the-end': 'All {rows} rows of this part are worked.',
  'place-moved': 'Row {next} comes now, not row {row}: the place was moved elsewhere. Nothing was changed.',
  'row-outside': 'Row {row} is not in this part: it has {rows} rows.',
  'nothing-to-undo': 'There is nothing to take back.',
} as const satisfies Record<string, string>;

export type StoreFaultCode = keyof typeof storeFaults;

export const storeFault = (
  code: StoreFaultCode,
  figures: Readonly<Record<string, number | string>> = {},
): Fault => fault(code, code, figures);

/** Thrown inside a transaction to take the whole of it back; the door turns it into a refusal. */
export class Refusal extends Error {
  readonly fault: Fault;
  constructor(code: StoreFaultCode, figures: Readonly<Record<string, number | string>> = {}) {
    super(code);
    this.fault = storeFault(code, figures);
  }
}

/** Thrown inside a transaction that was begun on a guess: nothing is wrong but the guess, another transaction will see. */
export class TryAgain extends Error {}

/** For a promise's `catch`: a refusal is no value, whatever else was thrown stays an error. */
export function noneWhenRefused(error: unknown): undefined {
  if (error instanceof Refusal) return undefined;
  throw error;
}

/** The name of whatever was thrown; an abort may carry no error at all, which is a failure like any other. */
export const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : 'AbortError';

/** Reopening cannot mend these; everything else may be a lost connection. */
const final: Readonly<Record<string, StoreFaultCode>> = {
  QuotaExceededError: 'storage-full',
  SecurityError: 'storage-refused',
  NotAllowedError: 'storage-refused',
  VersionError: 'database-newer',
  DataCloneError: 'not-storable',
  DataError: 'not-storable',
  ConstraintError: 'not-storable',
};

/** The refusal for an error that a new connection will not mend; undefined where one may. */
export function finalFault(error: unknown): Fault | undefined {
  if (error instanceof Refusal) return error.fault;
  const code = final[nameOf(error)];
  return code === undefined ? undefined : storeFault(code, { detail: nameOf(error) });
}
