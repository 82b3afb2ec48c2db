/** A screen's words: add `en/<screen>.ts` and `de/<screen>.ts`, and a line here. */
export const otherCatalogues = {
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
