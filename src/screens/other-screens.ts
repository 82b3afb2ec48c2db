import { faultCatalogues } from '../words/fault.ts';
import { withWords } from './with-words.ts';

/** A new garment and one that is changed are the same screen. */
const editor = withWords(
  () => import('./editor/editor-screen.tsx'),
  'editor',
  'gauge',
  ...faultCatalogues,
  'craft',
);

/** Every screen that the app does not open at, loaded when it is first opened, with the words it needs. */
export const otherScreens = {
  sample: withWords(() => import('./open/sample-screen.tsx'), 'knitting'),
  sampleOf: withWords(() => import('./open/sample-screen.tsx'), 'knitting'),
  samples: withWords(() => import('./open/samples-screen.tsx'), 'workbasket'),
  garment: withWords(() => import('./garment/garment-screen.tsx'), 'garment', 'gauge', 'craft'),
  count: withWords(() => import('./count/count-screen.tsx'), 'count', 'craft', 'row', ...faultCatalogues),
  yarn: withWords(
    () => import('./yarn/yarn-screen.tsx'),
    'yarn',
    'garment',
    'gauge',
    'craft',
    ...faultCatalogues,
  ),
  makingUp: withWords(
    () => import('./making-up/making-up-screen.tsx'),
    'makingUp',
    'gauge',
    'print',
    'garment',
    'craft',
    ...faultCatalogues,
  ),
  record: withWords(
    () => import('./record/record-screen.tsx'),
    'record',
    'garment',
    'craft',
    ...faultCatalogues,
  ),
  passOn: withWords(() => import('./pass-on/pass-on-screen.tsx'), 'passOn', 'garment', 'craft'),
  openLink: withWords(
    () => import('./pass-on/open-link-screen.tsx'),
    'passOn',
    'gauge',
    'craft',
    ...faultCatalogues,
  ),
  draft: withWords(() => import('./draft/draft-screen.tsx'), 'draft', 'craft', ...faultCatalogues),
  read: withWords(
    () => import('./pattern/pattern-screen.tsx'),
    'pattern',
    'gauge',
    'craft',
    'row',
    ...faultCatalogues,
  ),
  backup: withWords(() => import('./backup/backup-screen.tsx'), 'backup', 'craft', ...faultCatalogues),
  newGarment: editor,
  editGarment: editor,
  print: withWords(() => import('./print/print-screen.tsx'), 'print', 'garment', 'gauge', 'craft', 'row'),
  settings: withWords(() => import('./settings/settings-screen.tsx'), 'settings'),
} as const;
