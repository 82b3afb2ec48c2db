/** All that the phone does for the knitting screen, as one file that is fetched when the row stands on the screen. */
export { hush, readAloud } from './aloud.ts';
export { onHeadset } from './headset.ts';
export { onPageKeys } from './page-keys.ts';
export { tellStored } from './tell.ts';
export { stayAwake } from './wake-lock.ts';
