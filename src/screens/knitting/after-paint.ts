import type { ComponentType } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { later as whenStands } from '../../pace/first-screen.ts';
import type { CatalogueName } from '../../words/catalogues.ts';
import { loadWords } from '../../words/say.ts';
import { type Later, later } from '../later.tsx';
import type { Fetched } from './in-turn.ts';

/** What the row in hand can do without for a moment, as one file. */
const rest = () => import('./rest.ts');

type Rest = Awaited<ReturnType<typeof rest>>;
type PropsOf<Part> = Part extends (props: infer Props extends object) => unknown ? Props : object;

const all: Fetched[] = [];

/** One of them, with words that only it needs. */
function part<Name extends keyof Rest>(
  name: Name,
  ...words: readonly CatalogueName[]
): Later<PropsOf<Rest[Name]>> {
  const load = async () => (await Promise.all([rest(), loadWords(...words)]))[0][name];
  const made = later(load as () => Promise<ComponentType<PropsOf<Rest[Name]>>>);
  all.push(made);
  return made;
}

export const Ahead = part('Ahead', 'lap');
export const BeforeRow = part('BeforeRow', 'lap', 'count');
export const PlaceMap = part('PlaceMap');
export const RowFacts = part('RowFacts', 'lap');
export const PartEnd = part('PartEnd', 'partEnd', 'quiet');
export const ReadAhead = part('ReadAhead', 'notices');
export const SavingNotice = part('SavingNotice', 'notices');
export const Sheets = part('Sheets', 'otherRow');
export const NothingHere = part('NothingHere', 'notices');
export const LengthNotice = part('LengthNotice', 'length');
export const OverRow = part('OverRow', 'notices', 'ways');
export const ReadNotes = part('ReadNotes');
export const Locked = part('Locked', 'notices');
export const LookingBar = part('LookingBar', 'otherRow');

/**
 * Fetches all of it at once, which is one file and that of its words, so that an update of the app cannot take a part
 * away in the middle of knitting; each is drawn in a task of its own. Asked for at once: an effect that waits for a frame
 * would take those of the row along before the row is painted.
 */
export function useRestAfterPaint(): void {
  useLayoutEffect(() => whenStands('rest', async () => (await rest()).inTurn(all)), []);
}

/** A make that cannot be shown is said at once: nothing else comes first. */
export function useNothingHere(isSo: boolean): void {
  useLayoutEffect(() => {
    if (isSo) void NothingHere.fetch();
  }, [isSo]);
}
