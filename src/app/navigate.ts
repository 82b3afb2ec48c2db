import { signal } from '@preact/signals';
import { parseRoute, type Route } from './routes.ts';
import { locked } from './state.ts';

/** Where she is; undefined for an address that no screen has. */
export const route = signal<Route | undefined>(undefined);

/** The hash that is shown. */
let shown: string | undefined;

const hashNow = (): string => (location.hash === '' ? '#/' : location.hash);

function arrive(): void {
  const hash = hashNow();
  // the phone's back key is touched in a pocket too
  if (locked.value && shown !== hash) {
    history.forward();
    return;
  }
  shown = hash;
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
  history.replaceState(history.state, '', href);
  arrive();
}
