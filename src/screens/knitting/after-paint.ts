import { useEffect } from 'preact/hooks';
import { loadWords } from '../../words/say.ts';
import { later } from '../later.tsx';

/** What the row in hand can do without for a moment. */
export const PlaceMap = later(async () => (await import('./place-map.tsx')).PlaceMap);
export const SmallMap = later(async () => (await import('./small-map.tsx')).SmallMap);
export const RowColour = later(async () => (await import('./row-colour.tsx')).RowColour);
export const PartEnd = later(async () => (await import('./part-end.tsx')).PartEnd);
export const RowsSheet = later(async () => (await import('./rows-sheet.tsx')).RowsSheet);
export const ToolsSheet = later(async () => (await import('./tools-sheet.tsx')).ToolsSheet);
export const LegendSheet = later(async () => (await import('./legend-sheet.tsx')).LegendSheet);
export const NothingHere = later(async () => (await import('./nothing-here.tsx')).NothingHere);
/** With its words, which only garments read from a text need. */
export const LengthNotice = later(
  async () => (await Promise.all([import('./length-notice.tsx'), loadWords('length')]))[0].LengthNotice,
);
export const RestNotice = later(async () => (await import('./rest-notice.tsx')).RestNotice);
export const RowNotes = later(async () => (await import('../count/row-notes.tsx')).RowNotes);
export const Locked = later(async () => (await import('./locked.tsx')).Locked);

const all = [
  SmallMap,
  RowColour,
  PlaceMap,
  RowsSheet,
  ToolsSheet,
  PartEnd,
  LegendSheet,
  Locked,
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
    const timer = setTimeout(() => void Promise.all(all.map((part) => part.fetch())), AFTER_MS);
    return () => clearTimeout(timer);
  }, []);
}
