/** Whether the browser promises to keep what is stored, and how much room there is. */
export { askToKeep, isKept, type Kept, type Room, roomLeft } from '../../store/box/persist.ts';
