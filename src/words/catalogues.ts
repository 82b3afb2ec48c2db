import { words as craft } from './en/craft.ts';
import { words as knitting } from './en/knitting.ts';
import { words as row } from './en/row.ts';
import { words as ui } from './en/ui.ts';
import type { otherCatalogues } from './other-catalogues.ts';
import type { Language } from './settings.ts';

/** English words of the row in hand, in the first script itself: they are what is said where all else is missing. */
export const alwaysThere = { ui, craft, row, knitting } as const;

const here =
  <W>(words: W) =>
  async () => ({ words });

/** The words of the screens that an app on the home screen opens at. */
export const firstCatalogues = {
  ui: { en: here(ui), de: () => import('./de/ui.ts') },
  craft: { en: here(craft), de: () => import('./de/craft.ts') },
  row: { en: here(row), de: () => import('./de/row.ts') },
  knitting: { en: here(knitting), de: () => import('./de/knitting.ts') },
  workbasket: { en: () => import('./en/workbasket.ts'), de: () => import('./de/workbasket.ts') },
} as const;

/**
 * Every catalogue by name, one for each screen and a few shared ones, each loaded when it is first needed. The list
 * of most of them is itself fetched then: the row in hand is not kept waiting for it.
 */
export type Catalogues = typeof firstCatalogues & typeof otherCatalogues;

export type CatalogueName = keyof Catalogues;

/** A catalogue's file in a language. Rejects where it is not on this device and there is no network. */
export async function fetchCatalogue<Name extends CatalogueName>(name: Name, language: Language) {
  const known =
    name in firstCatalogues ? firstCatalogues : (await import('./other-catalogues.ts')).otherCatalogues;
  return (known as Catalogues)[name][language]();
}
