import { type Fault, fault, ok, type Result, refuse } from '../../../knit/fault.ts';
import type { KeptName, KeptValue } from './kept-shapes.ts';

/**
 * What was kept (by this app, by an older or newer one, or in a backup of anyone's), checked whole before it is used;
 * undefined where nothing was. Faults: 'kept-unreadable'; 'app-incomplete' where the shapes cannot be fetched.
 */
export async function readKept<K extends KeptName>(
  name: K,
  stored: unknown,
): Promise<Result<KeptValue<K> | undefined>> {
  if (stored === undefined || stored === null) return ok(undefined);
  const shapes = await import('./kept-shapes.ts').catch(() => undefined);
  if (shapes === undefined) return refuse(fault('app-incomplete'));
  const value = shapes.whole(name, stored);
  return value === undefined ? refuse(fault('kept-unreadable')) : ok(value);
}

/** Something kept that cannot be used as it is. */
export interface Unread {
  readonly fault: Fault | undefined;
  readonly stored: unknown;
}

/** A text in what could not be read, by its path; '' where there is none. */
export function textIn(stored: unknown, ...path: readonly string[]): string {
  let at = stored;
  for (const key of path)
    at = typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[key] : undefined;
  return typeof at === 'string' ? at : '';
}
