import { turn } from './turn.ts';

/** After so many turns each of these files was tried; one in so many a run, so that a run stays near to five minutes on two processors. */
export const TURNS = 12;

/**
 * Files in a browser that are tried once in so many turns: each looks at a screen or goes a way of its own, and seldom
 * breaks. What is stored, what holds offline, the limits of size, the row in hand at every size of text and the walk through
 * every screen are in each run. The longest first: so each turn takes about as long as another.
 */
const inBrowser = [
  'count',
  'whole-in-sight',
  'in-its-place',
  'third-look',
  'second-look',
  'row-and-drawing',
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
  'not-fetched',
  'three-taps',
  'blurred',
  'forced',
  'changing-host',
  'old-shoulder',
  'beside-the-page',
  'at-a-glance',
  'opened-by-system',
  'two-copies',
  'shared',
  'kept-compiled',
  'stripes-ahead',
  'draft-in-inches',
] as const;

/**
 * Laws over many garments and tables of many wordings that are tried as often, the longest first. That no row is
 * lost, that a plan is what the knitter's own rules and the published patterns say, and every single figure are in each run.
 */
const inNode = [
  'knit/pattern/linear',
  'knit/making-up/after-changes-laws',
  'app/garments/thirty-in-gauge',
  'screens/place-figures',
  'knit/written/reads-back-laws',
  'app/doors',
  'app/garments/open-garments',
  'app/garments/in-gauge-laws',
  'knit/garment/one-seam-stitch',
  'outside/published-doors',
  'knit/pattern/injected-work',
  'knit/pattern/any-text',
  'knit/piece/faces',
  'app/garments/as-it-stands',
  'knit/piece/regauge',
  'screens/schematic-laws',
  'knit/making-up/changes-laws',
  'knit/garment/cuff-parity',
  'knit/garment/turns-closed',
  'knit/pattern/say/rarer-words-of-rows',
  'app/garments/passing-on',
  'app/garments/mending',
  'words/count',
  'knit/written/raglan-opening',
  'knit/making-up/read-back-laws',
  'store/share/code-run',
  'knit/piece/form/round-trip',
  'knit/row/read/wordings',
  'knit/row/read/small-words',
  'words/every-fault/every-fault',
  'knit/pattern/say/rhythms-in-all-wordings',
  'knit/garment/neck-openings',
  'knit/written/mirrored-fronts',
  'knit/written/drafts',
  'knit/pattern/say/words-between',
  'knit/row/read/phrases',
  'knit/pattern/say/stripes-in-all-wordings',
  'knit/pattern/say/rarer-words-in-a-row',
  'store/share/link-parts',
] as const;

const restsNow = (_: string, i: number): boolean => (i + turn) % TURNS !== 0;

/** The files that rest in this turn; none with RIDGELINE_LOOKS=all. */
export const resting: readonly string[] =
  process.env.RIDGELINE_LOOKS === 'all'
    ? []
    : [
        ...inBrowser.filter(restsNow).map((name) => `tests/browser/${name}.test.ts`),
        ...inNode.filter(restsNow).map((name) => `tests/${name}.test.ts`),
      ];
