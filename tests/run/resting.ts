import { turn } from './turn.ts';

/**
 * Files in a browser of which every run leaves one in three to another turn: each looks at a screen or goes a way of its
 * own, and seldom breaks. What is stored, what holds offline, the limits of size, the row in hand and the walk through every
 * screen are in each run. The longest first: every third of them is a third of the time.
 */
const inTurn = [
  'whole-in-sight',
  'in-its-place',
  'in-sizes',
  'right-to-left',
  'two-ways',
  'editor',
  'parts',
  'mends',
  'to-device',
  'locked',
  'speech',
  'pass-on',
  'hand',
  'draft',
  'another-size',
  'languages',
  'set-out',
  'all-done',
  'editor-pages',
  'by-keys',
  'first-seen',
  'openings',
  'by-tab',
  'pattern',
  'rooms',
  'from-file',
  'lap',
  'notes',
  'making-up',
  'garter-tension',
  'join-by-hand',
  'straight',
  'three-taps',
  'blurred',
  'two-copies',
  'shared',
  'kept-compiled',
  'stripes-ahead',
  'draft-in-inches',
] as const;

/** The files that rest in this turn; none with RIDGELINE_LOOKS=all. */
export const resting: readonly string[] =
  process.env.RIDGELINE_LOOKS === 'all'
    ? []
    : inTurn.filter((_, i) => (i + turn) % 3 === 0).map((name) => `tests/browser/${name}.test.ts`);
