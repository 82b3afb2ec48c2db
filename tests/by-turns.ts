/*
 * What never broke is tried in part in every run, and whole with RIDGELINE_DRAFTS.
 */
const isWhole = process.env.RIDGELINE_DRAFTS !== undefined;

/** Of a long list every so many-th, from another one on with each turn, so that several turns together take all of it. */
export const byTurns = <T>(all: readonly T[], turn: number, every = 3): readonly T[] =>
  isWhole ? all : all.filter((_, i) => (i + turn) % every === 0);

/** Of so many runs of a law three tenths. */
export const share = (runs: number): number => (isWhole ? runs : Math.ceil(0.3 * runs));
