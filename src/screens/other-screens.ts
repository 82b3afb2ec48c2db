import type { CatalogueName } from '../words/catalogues.ts';
import { loadFaults } from '../words/fault.ts';
import { type ScreenModule, withWords } from './with-words.ts';

/** The same with the sentences for whatever cannot be. */
const withFaults = (load: () => Promise<ScreenModule>, ...words: readonly CatalogueName[]) =>
  withWords(async () => (await Promise.all([load(), loadFaults()]))[0], ...words);

/** A new garment and one that is changed are the same screen. */
const editor = withFaults(
  () => import('./editor/editor-screen.tsx'),
  'editor',
  'straight',
  'mends',
  'gauge',
  'craft',
);

/** Every screen that the app does not open at, loaded when it is first opened, with the words it needs. */
export const otherScreens = {
  sample: withWords(() => import('./open/sample-screen.tsx'), 'knitting'),
  sampleOf: withWords(() => import('./open/sample-screen.tsx'), 'knitting'),
  samples: withWords(() => import('./open/samples-screen.tsx'), 'workbasket'),
  garment: withWords(() => import('./garment/garment-screen.tsx'), 'garment', 'gauge', 'craft'),
  count: withFaults(
    () => import('./count/count-screen.tsx'),
    'count',
    'pace',
    'lap',
    'mends',
    'craft',
    'row',
    'ways',
    'yarn',
  ),
  yarn: withFaults(() => import('./yarn/yarn-screen.tsx'), 'yarn', 'garment', 'gauge', 'craft'),
  makingUp: withFaults(
    () => import('./making-up/making-up-screen.tsx'),
    'makingUp',
    'gauge',
    'print',
    'garment',
    'craft',
  ),
  record: withFaults(() => import('./record/record-screen.tsx'), 'record', 'garment', 'craft'),
  passOn: withFaults(() => import('./pass-on/pass-on-screen.tsx'), 'passOn', 'garment', 'craft', 'draft'),
  openLink: withFaults(() => import('./pass-on/open-link-screen.tsx'), 'passOn', 'gauge', 'craft', 'draft'),
  draft: withFaults(() => import('./draft/draft-screen.tsx'), 'draft', 'craft'),
  read: withFaults(() => import('./pattern/pattern-screen.tsx'), 'pattern', 'gauge', 'craft', 'row'),
  backup: withFaults(() => import('./backup/backup-screen.tsx'), 'backup', 'craft'),
  newGarment: editor,
  editGarment: editor,
  print: withWords(
    () => import('./print/print-screen.tsx'),
    'print',
    'knitting',
    'lap',
    'garment',
    'gauge',
    'craft',
    'row',
  ),
  settings: withWords(() => import('./settings/settings-screen.tsx'), 'settings'),
} as const;
