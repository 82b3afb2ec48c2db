/**
 * Every catalogue by name, one for each screen and a few shared ones, each loaded when it is first needed.
 * A screen's words: add `en/<screen>.ts` and `de/<screen>.ts`, and a line here.
 */
export const catalogues = {
  ui: { en: () => import('./en/ui.ts'), de: () => import('./de/ui.ts') },
  craft: { en: () => import('./en/craft.ts'), de: () => import('./de/craft.ts') },
  row: { en: () => import('./en/row.ts'), de: () => import('./de/row.ts') },
  knitting: { en: () => import('./en/knitting.ts'), de: () => import('./de/knitting.ts') },
  workbasket: { en: () => import('./en/workbasket.ts'), de: () => import('./de/workbasket.ts') },
  garment: { en: () => import('./en/garment.ts'), de: () => import('./de/garment.ts') },
  settings: { en: () => import('./en/settings.ts'), de: () => import('./de/settings.ts') },
  editor: { en: () => import('./en/editor.ts'), de: () => import('./de/editor.ts') },
  recipeFaults: { en: () => import('./en/recipe-faults.ts'), de: () => import('./de/recipe-faults.ts') },
  patternFaults: { en: () => import('./en/pattern-faults.ts'), de: () => import('./de/pattern-faults.ts') },
  count: { en: () => import('./en/count.ts'), de: () => import('./de/count.ts') },
  yarn: { en: () => import('./en/yarn.ts'), de: () => import('./de/yarn.ts') },
  makingUp: { en: () => import('./en/making-up.ts'), de: () => import('./de/making-up.ts') },
  passOn: { en: () => import('./en/pass-on.ts'), de: () => import('./de/pass-on.ts') },
  record: { en: () => import('./en/record.ts'), de: () => import('./de/record.ts') },
  backup: { en: () => import('./en/backup.ts'), de: () => import('./de/backup.ts') },
  storeFaults: { en: () => import('./en/store-faults.ts'), de: () => import('./de/store-faults.ts') },
  print: { en: () => import('./en/print.ts'), de: () => import('./de/print.ts') },
  length: { en: () => import('./en/length.ts'), de: () => import('./de/length.ts') },
  pattern: { en: () => import('./en/pattern.ts'), de: () => import('./de/pattern.ts') },
  draft: { en: () => import('./en/draft.ts'), de: () => import('./de/draft.ts') },
} as const;

export type CatalogueName = keyof typeof catalogues;

export const catalogueNames = Object.keys(catalogues) as readonly CatalogueName[];
