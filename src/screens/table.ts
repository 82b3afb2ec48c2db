import type { ComponentType } from 'preact';
import type { Route, ScreenName } from '../app/routes.ts';
import type { CatalogueName } from '../words/catalogues.ts';
import { loadWords } from '../words/say.ts';

/** What a screen's file gives: the component, drawn anew for each address. */
export interface ScreenModule {
  readonly default: ComponentType<{ readonly route: Route }>;
}

const withWords =
  (load: () => Promise<ScreenModule>, ...words: readonly CatalogueName[]) =>
  async (): Promise<ScreenModule> =>
    (await Promise.all([load(), loadWords(...words)]))[0];

/** A new garment and one that is changed are the same screen. */
const editor = withWords(() => import('./editor/editor-screen.tsx'), 'editor', 'recipeFaults', 'craft');

/** Every screen, loaded when it is first opened, with the words it needs. */
export const screens: Readonly<Record<ScreenName, () => Promise<ScreenModule>>> = {
  workbasket: withWords(() => import('./workbasket/workbasket-screen.tsx'), 'workbasket', 'craft'),
  continue: withWords(() => import('./open/continue-screen.tsx'), 'knitting'),
  sample: withWords(() => import('./open/sample-screen.tsx'), 'knitting'),
  sampleOf: withWords(() => import('./open/sample-screen.tsx'), 'knitting'),
  samples: withWords(() => import('./open/samples-screen.tsx'), 'workbasket'),
  garment: withWords(() => import('./garment/garment-screen.tsx'), 'garment', 'craft'),
  knitting: withWords(() => import('./knitting/knitting-screen.tsx'), 'knitting', 'craft', 'row'),
  count: withWords(() => import('./count/count-screen.tsx'), 'count', 'craft', 'row', 'recipeFaults'),
  yarn: withWords(() => import('./yarn/yarn-screen.tsx'), 'yarn', 'garment', 'craft', 'recipeFaults'),
  makingUp: withWords(
    () => import('./making-up/making-up-screen.tsx'),
    'makingUp',
    'print',
    'garment',
    'craft',
    'recipeFaults',
  ),
  record: withWords(() => import('./record/record-screen.tsx'), 'record', 'garment', 'craft', 'recipeFaults'),
  passOn: withWords(() => import('./pass-on/pass-on-screen.tsx'), 'passOn', 'garment', 'craft'),
  openLink: withWords(() => import('./pass-on/open-link-screen.tsx'), 'passOn', 'craft', 'recipeFaults'),
  draft: withWords(() => import('./draft/draft-screen.tsx'), 'draft', 'craft'),
  read: withWords(
    () => import('./pattern/pattern-screen.tsx'),
    'pattern',
    'craft',
    'row',
    'patternFaults',
    'recipeFaults',
  ),
  backup: withWords(() => import('./backup/backup-screen.tsx'), 'backup', 'storeFaults', 'craft'),
  newGarment: editor,
  editGarment: editor,
  print: withWords(() => import('./print/print-screen.tsx'), 'print', 'garment', 'craft', 'row'),
  settings: withWords(() => import('./settings/settings-screen.tsx'), 'settings'),
};
