import { type Fault, type FaultCode, fault, type Result } from '../knit/fault.ts';

declare module '../knit/fault.ts' {
  // what the store adds to the one table of faults
  interface FaultFigures extends StoreFaults {}
}

/**
 * Everything the store can refuse: what is asked of it, a file that is read in, a link that is opened.
 * A refused change is not stored, in whole or in part: it can simply be tried again.
 */
export interface StoreFaults {
  'storage-full': never;
  'storage-refused': never;
  'store-not-answering': never;
  'database-newer': never;
  'database-blocked': never;
  'database-strange': never;
  'migration-failed': never;
  'not-storable': 'detailText';
  'text-too-long': 'whereText' | 'characters' | 'mostCharacters';
  'photos-full': 'mostMillions';
  'no-such-garment': never;
  'garment-there': never;
  'no-such-make': never;
  'no-such-plan': never;
  'no-such-entry': never;
  'app-incomplete': never;
  'plan-missing': 'part';
  'at-the-end': 'rows';
  'place-moved': 'row' | 'nextRow';
  'plan-moved': never;
  'row-outside': 'row' | 'rows';
  'nothing-to-undo': never;
  'no-way-back': never;
  'kept-unreadable': never;
  'backup-too-large': 'sizeMillions' | 'mostMillions';
  'backup-not-json': never;
  'backup-not-ours': never;
  'backup-newer': 'version';
  'backup-damaged': 'pathText';
  'backup-not-knittable': 'pieceName' | 'row';
  'backup-without': 'whatText' | 'pathText';
  'backup-too-full': 'sizeMillions' | 'mostMillions';
  'backup-file-refused': never;
  'backup-file-gone': never;
  'document protected': never;
  'document damaged': never;
  'document pictures only': never;
  'document too long': 'pagesNumber' | 'mostNumber';
  'document too large': 'sizeMillions' | 'mostMillions';
  'document unknown': never;
  'link damaged': never;
  'link not a garment': 'whereText';
  'link too long': 'characters' | 'mostCharacters';
  'link version': 'version';
  'nothing to save': never;
  'text missing': never;
  'not stored': never;
}

/**
 * Of a tap, what no second try can mend: it asked for what there is not, or another window was there first. True where
 * she has to be told, since the screen does not show why nothing came of it.
 */
export const inVain: Readonly<Partial<Record<FaultCode, boolean>>> = {
  'at-the-end': false,
  'nothing-to-undo': false,
  'row-outside': false,
  'place-moved': true,
  'plan-moved': true,
  'no-such-make': true,
  'no-such-plan': true,
  'no-such-entry': true,
  'not-storable': true,
};

/** Why something was not written that another try, or a better day, may still write; undefined for all else. */
export function mayStill(answer: Result<unknown>): Fault | undefined {
  const why = answer.ok ? undefined : answer.faults[0];
  return why && inVain[why.code] === undefined ? why : undefined;
}

/** Thrown inside a transaction to take the whole of it back; the door turns it into a refusal. */
export class Refusal extends Error {
  readonly fault: Fault;
  constructor(found: Fault) {
    super(found.code);
    this.fault = found;
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
const final: Readonly<
  Record<string, 'storage-full' | 'storage-refused' | 'database-newer' | 'not-storable'>
> = {
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
  const name = nameOf(error);
  const known = final[name];
  return known === 'not-storable' ? fault(known, { detailText: name }) : known && fault(known);
}
