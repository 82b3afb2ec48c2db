import { withWords } from './with-words.ts';

/** A new garment and one that is changed are the same screen. */
const editor = withWords(
  () => import('./editor/editor-screen.tsx'),
  'editor',
  'gauge',
  'recipeFaults',
  'craft',
);

/** Every screen that the app does not open at, loaded when it is first opened, with the words it needs. */
export const otherScreens = {
  sample: withWords(() => import('./open/sample-screen.tsx'), 'knitting'),
  sampleOf: withWords(() => import('./open/sample-screen.tsx'), 'knitting'),
  samples: withWords(() => import('./open/samples-screen.tsx'), 'workbasket'),
  garment: withWords(() => import('./garment/garment-screen.tsx'), 'garment', 'gauge', 'craft'),
  count: withWords(() => import('./count/count-screen.tsx'), 'count', 'craft', 'row', 'recipeFaults'),
  yarn: withWords(
    () => import('./yarn/yarn-screen.tsx'),
    'yarn',
    'garment',
    'gauge',
    'craft',
    'recipeFaults',
  ),
  makingUp: withWords(
    () => import('./making-up/making-up-screen.tsx'),
    'makingUp',
    'gauge',
    'print',
    'garment',
    'craft',
    'recipeFaults',
  ),
  record: withWords(() => import('./record/record-screen.tsx'), 'record', 'garment', 'craft', 'recipeFaults'),
  passOn: withWords(() => import('./pass-on/pass-on-screen.tsx'), 'passOn', 'garment', 'craft'),
  openLink: withWords(
    () => import('./pass-on/open-link-screen.tsx'),
    'passOn',
    'gauge',
    'craft',
    'recipeFaults',
  ),
  draft: withWords(() => import('./draft/draft-screen.tsx'), 'draft', 'craft'),
  read: withWords(
    () => import('./pattern/pattern-screen.tsx'),
    'pattern',
    'gauge',
    'craft',
    'row',
    'patternFaults',
    'recipeFaults',
  ),
  backup: withWords(() => import('./backup/backup-screen.tsx'), 'backup', 'storeFaults', 'craft'),
  newGarment: editor,
  editGarment: editor,
  print: withWords(() => import('./print/print-screen.tsx'), 'print', 'garment', 'gauge', 'craft', 'row'),
  settings: withWords(() => import('./settings/settings-screen.tsx'), 'settings'),
} as const;
