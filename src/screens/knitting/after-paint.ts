import { later } from '../later.tsx';

/** What the row in hand can do without for a moment: it is fetched when the row stands on the screen. */
export const PlaceMap = later(async () => (await import('./place-map.tsx')).PlaceMap);
export const SmallMap = later(async () => (await import('./small-map.tsx')).SmallMap);
export const PartEnd = later(async () => (await import('./part-end.tsx')).PartEnd);
export const RowsSheet = later(async () => (await import('./rows-sheet.tsx')).RowsSheet);
export const ToolsSheet = later(async () => (await import('./tools-sheet.tsx')).ToolsSheet);
export const LegendSheet = later(async () => (await import('./legend-sheet.tsx')).LegendSheet);
export const NothingHere = later(async () => (await import('./nothing-here.tsx')).NothingHere);
export const RestNotice = later(async () => (await import('./rest-notice.tsx')).RestNotice);
export const Locked = later(async () => (await import('./locked.tsx')).Locked);
