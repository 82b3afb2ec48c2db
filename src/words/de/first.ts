/** What the first screens say. */
export * as craft from './craft.ts';
export * as knitting from './knitting.ts';
export * as notices from './notices.ts';
export * as row from './row.ts';
export * as ui from './ui.ts';
export * as workbasket from './workbasket.ts';
