/** English rows are printed by the craft itself (src/knit/row/row-words.ts). */
export const words = {} as const;
