import { saysName } from './says-name.ts';

/** Options whose words are the catalogue's own names. */
export const worded = <T extends string>(names: readonly T[]) =>
  names.map((value) => ({ value, label: saysName(value) }));
