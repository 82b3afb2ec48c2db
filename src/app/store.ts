import type { Result } from '../knit/fault.ts';
import type { Store } from '../store/store.ts';
import { readFault } from './state.ts';

/** The opened store; intents wait for it, so that a screen can paint while it opens. */
let give: (store: Store) => void = () => undefined;
let given = new Promise<Store>((resolve) => {
  give = resolve;
});

export const store = (): Promise<Store> => given;

export const giveStore = (opened: Store): void => give(opened);

/** Waits anew. @instrument of tests that open one store after the other */
export function forgetStore(): void {
  given = new Promise<Store>((resolve) => {
    give = resolve;
  });
}

/** The value; or undefined, with the fault where the screens show it. Nothing read is not the same as nothing there. */
export function readOr<T>(result: Result<T>): T | undefined {
  readFault.value = result.ok ? undefined : result.faults[0];
  return result.ok ? result.value : undefined;
}
