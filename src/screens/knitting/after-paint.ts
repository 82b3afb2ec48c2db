import { useEffect } from 'preact/hooks';
import { firstScreen } from '../../app/first-screen.ts';
import { loadWords } from '../../words/say.ts';
import { later } from '../later.tsx';

/** What the row in hand can do without for a moment, as one file. */
const rest = () => import('./rest.ts');

export const PlaceMap = later(async () => (await rest()).PlaceMap);
export const SmallMap = later(async () => (await rest()).SmallMap);
export const RowColour = later(async () => (await rest()).RowColour);
export const PartEnd = later(async () => (await rest()).PartEnd);
export const RowsSheet = later(async () => (await rest()).RowsSheet);
export const ToolsSheet = later(async () => (await rest()).ToolsSheet);
export const LegendSheet = later(async () => (await rest()).LegendSheet);
export const NothingHere = later(async () => (await rest()).NothingHere);
/** With its words, which only garments read from a text need. */
export const LengthNotice = later(
  async () => (await Promise.all([rest(), loadWords('length')]))[0].LengthNotice,
);
export const RestNotice = later(async () => (await rest()).RestNotice);
export const RowNotes = later(async () => (await rest()).RowNotes);
export const Locked = later(async () => (await rest()).Locked);
export const LookingBar = later(async () => (await rest()).LookingBar);

const all = [
  SmallMap,
  RowColour,
  PlaceMap,
  RowsSheet,
  ToolsSheet,
  PartEnd,
  LegendSheet,
  Locked,
  LookingBar,
  RowNotes,
  LengthNotice,
  RestNotice,
  NothingHere,
];

/** Long enough for the row to be painted on a slow phone, short enough that no thumb notices. */
const AFTER_MS = 200;

/** Fetches all of it at once, so that an update of the app cannot take a part away in the middle of knitting. */
export function useRestAfterPaint(): void {
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    void firstScreen.then(() => {
      timer = setTimeout(() => void Promise.all(all.map((part) => part.fetch())), AFTER_MS);
    });
    return () => clearTimeout(timer);
  }, []);
}

/** A make that cannot be shown is said at once: nothing else comes first. */
export function useNothingHere(isSo: boolean): void {
  useEffect(() => {
    if (isSo) void NothingHere.fetch();
  }, [isSo]);
}
