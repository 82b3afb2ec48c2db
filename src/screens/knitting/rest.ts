/** All that the knitting screen shows beside the row itself; fetched once the row is painted (after-paint.ts). */
export { ReadNotes } from '../count/read-notes.ts';
export { Ahead } from './ahead.tsx';
export { BeforeRow } from './before-row.tsx';
export { inTurn } from './in-turn.ts';
export { LengthNotice } from './length-notice.tsx';
export { Locked } from './locked.tsx';
export { LookingBar } from './looking-bar.tsx';
export { NothingHere } from './nothing-here.tsx';
export { OverRow } from './over-row.tsx';
export { PartEnd } from './part-end.tsx';
export { PlaceMap } from './place-map.tsx';
export { ReadAhead } from './read-ahead.tsx';
export { RowFacts } from './row-facts.tsx';
export { SavingNotice } from './saving-notice.tsx';
export { Sheets } from './sheets.tsx';
