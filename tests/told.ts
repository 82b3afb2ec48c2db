import type { Fault } from '../src/knit/fault.ts';
// with it the store's faults stand in the table that every test is compiled with
import type {} from '../src/store/faults.ts';

/** Faults as a test shows them where none should be: code, figures and place. */
export const told = (faults: readonly Fault[]): string =>
  faults
    .map(({ code, figures, at }) => `${code} ${JSON.stringify(figures)} ${JSON.stringify(at)}`)
    .join('; ');
