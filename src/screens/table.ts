import type { ScreenName } from '../app/routes.ts';
import KnittingScreen from './knitting/knitting-screen.tsx';
import ContinueScreen from './open/continue-screen.tsx';
import type { otherScreens } from './other-screens.ts';
import { type ScreenModule, withWords } from './with-words.ts';

/** The screens that an app on the home screen opens at: they are not kept waiting for the list of the others. */
const firstScreens = {
  workbasket: withWords(() => import('./workbasket/workbasket-screen.tsx'), 'workbasket', 'craft'),
  // in the first script itself
  continue: withWords(async () => ({ default: ContinueScreen }), 'knitting', 'craft', 'row'),
  knitting: withWords(async () => ({ default: KnittingScreen }), 'knitting', 'craft', 'row'),
} as const;

type OtherName = Exclude<ScreenName, keyof typeof firstScreens>;

/** Loads a screen with the words it needs. Rejects where its files are not on this device and there is no network. */
export async function loadScreen(name: ScreenName): Promise<ScreenModule> {
  if (name in firstScreens) return firstScreens[name as keyof typeof firstScreens]();
  const others: Readonly<Record<OtherName, () => Promise<ScreenModule>>> = (await fetchOthers()).otherScreens;
  return others[name as OtherName]();
}

const fetchOthers = (): Promise<{ readonly otherScreens: typeof otherScreens }> =>
  import('./other-screens.ts');
