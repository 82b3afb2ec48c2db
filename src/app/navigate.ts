import { signal } from '@preact/signals';
import { parseRoute, type Route } from './routes.ts';
import { locked } from './state.ts';

/** Where she is; undefined for an address that no screen has. */
export const route = signal<Route | undefined>(undefined);

/** Hashes of this visit, the newest last: tells a step back from a step on. */
const trail: string[] = [];

const hashNow = (): string => (location.hash === '' ? '#/' : location.hash);

function arrive(): void {
  const hash = hashNow();
  // the phone's back key is touched in a pocket too; going forward adds no step to go back by
  if (locked.value && trail.at(-1) !== hash) {
    history.forward();
    return;
  }
  if (trail.at(-2) === hash) trail.pop();
  else if (trail.at(-1) !== hash) trail.push(hash);
  route.value = parseRoute(hash);
}

export function startRouting(): void {
  addEventListener('hashchange', arrive);
  arrive();
}

/** Goes on to an address, so that the phone's back button returns here. */
export function goTo(href: string): void {
  if (hashNow() === href) arrive();
  else location.hash = href;
}

/** Takes the place of the present address: back does not return here. */
export function goInstead(href: string): void {
  trail.pop();
  history.replaceState(history.state, '', href);
  arrive();
}
