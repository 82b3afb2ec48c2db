import type { ComponentType } from 'preact';
import type { Route } from '../app/routes.ts';
import type { CatalogueName } from '../words/catalogues.ts';
import { loadWords } from '../words/say.ts';

/** What a screen's file gives: the component, drawn anew for each address. */
export interface ScreenModule {
  readonly default: ComponentType<{ readonly route: Route }>;
}

/** Loads a screen and its words beside each other. */
export const withWords =
  (load: () => Promise<ScreenModule>, ...words: readonly CatalogueName[]) =>
  async (): Promise<ScreenModule> =>
    (await Promise.all([load(), loadWords(...words)]))[0];
