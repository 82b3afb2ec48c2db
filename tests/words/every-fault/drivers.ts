import type { Fault, FaultCode, Result } from '../../../src/knit/fault.ts';

/** What a function that refuses gives back: a result, its faults, or one of them. */
export type Made = Result<unknown> | readonly Fault[] | Fault | undefined;

/** For each code a real input that makes it; a code of the table without one does not compile. */
export type Drivers<Code extends FaultCode> = Readonly<Record<Code, () => Made | Promise<Made>>>;

export function faultsIn(made: Made): readonly Fault[] {
  if (made === undefined) return [];
  if (Array.isArray(made)) return made;
  if ('ok' in made) return made.ok ? [] : made.faults;
  return [made as Fault];
}
