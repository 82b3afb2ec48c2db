import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fabricNames } from '../../../src/knit/fabric.ts';
import { armholeKinds } from '../../../src/knit/garment/kinds/armholes.ts';
import { neckShapes } from '../../../src/knit/garment/kinds/necks.ts';
import { shoulderEnds, shoulderWays } from '../../../src/knit/garment/kinds/shoulders.ts';
import { silhouettes } from '../../../src/knit/garment/kinds/silhouettes.ts';
import { sleeveShapes } from '../../../src/knit/garment/kinds/sleeve-shapes.ts';

/**
 * Where the source asks a kind for its name instead of reading its record: `=== 'raglan'`, `case 'V'`,
 * `fabric.startsWith('rib')`. The same word may name something else; such places stand below with what they mean.
 */
const named = [
  ...armholeKinds,
  ...neckShapes,
  ...silhouettes,
  ...sleeveShapes,
  ...shoulderWays,
  // a part's own end and a shaping are called 'bind off' too: of a shoulder it is found by what is compared
  ...shoulderEnds.filter((end) => end !== 'bind off'),
  ...fabricNames,
].join('|');
const asks = new RegExp(
  `(?:[!=]==\\s*|\\bcase\\s+)'(?:${named})'|\\bshoulderEnd\\s*[!=]==|\\b(?:startsWith|includes)\\('(?:${named}|rib)`,
  'g',
);

/** By file: how many such places, and what else the word means there, or why the name itself is what is asked. */
const elsewhere: Readonly<Record<string, readonly [places: number, meaning: string]>> = {
  'src/knit/making-up/levels.ts': [1, 'a seam along a raglan, which no armhole is measured at'],
  'src/knit/making-up/phrases.ts': [2, 'a step that sews raglans, and the way of a seam along one'],
  'src/knit/making-up/making-up.ts': [1, 'a seam along a raglan'],
  'src/knit/making-up/piece-groups.ts': [1, 'a step that sews raglans'],
  'src/knit/piece/form/straight.ts': [
    4,
    "a boat neck or a V of a beginner's straight panels, no neck of a draft",
  ],
  'src/knit/piece/form/straight-again.ts': [3, 'the same necks, found in panels that were made so'],
  'src/knit/yarn/striped-through.ts': [1, 'a seam along a raglan, sewn row to row'],
  'src/screens/editor/straight-panels.tsx': [1, 'the depth of a V is asked for of straight panels only'],
  'src/screens/making-up/says-step.ts': [1, 'a step that sews raglans'],
  'src/knit/pattern/follow/build/fabric.ts': [1, "'knit for 5 cm' goes on in the text's stocking stitch"],
  'src/knit/pattern/follow/build/in-fabrics.ts': [
    2,
    'what a row names is worked as it stands in garter stitch and in stocking stitch',
  ],
  'src/knit/pattern/follow/build/make-row.ts': [1, "the text's stocking stitch is purled on the wrong side"],
  'src/knit/pattern/follow/build/cut-by-fabric.ts': [
    1,
    'rows spelled out in a part that names no fabric of its own',
  ],
  'src/knit/pattern/follow/build/told-section.ts': [
    1,
    'one rib fits odd counts where its even kind does not',
  ],
  'src/knit/pattern/follow/even.ts': [
    2,
    "'beg with a k row', or a WS one, chooses between stocking stitch and its reverse",
  ],
  'src/knit/pattern/follow/borders.ts': [
    1,
    'edges that were knit throughout are said in garter stitch: between them lies stocking stitch',
  ],
  'src/knit/pattern/follow/on-needle.ts': [
    1,
    'whether other pieces of the text are in anything but its stocking stitch',
  ],
  'src/knit/pattern/follow/rows.ts': [
    1,
    'a purl row before reverse stocking stitch is no wrong side: it is worked so itself',
  ],
  'src/knit/pattern/say/rounds.ts': [1, 'a round of knitting, no shape'],
  'src/knit/making-up/propose.ts': [1, 'a text tells of raglan seams, which no shape of a bare piece does'],
  'src/knit/written/english-joining.ts': [1, 'a step that sews raglans'],
  'src/words/de/written/joining.ts': [1, 'the seam along a raglan that waits for a band'],
  'src/words/fr/written/joining.ts': [1, 'the seam along a raglan that waits for a band'],
  'src/knit/written/sections.ts': [1, 'a gauge that says no fabric is read in stocking stitch'],
  'src/screens/draft/swatches.tsx': [1, 'yarn is sorted by its count in stocking stitch'],
};

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/.test(path))
  .map((path) => `src/${path}`);

const placesIn = (path: string): number => [...readFileSync(path, 'utf8').matchAll(asks)].length;

describe('kinds', () => {
  it('are asked for what their record holds, never by name, but where the word means something else', () => {
    const found = Object.fromEntries(
      sources.map((path) => [path, placesIn(path)] as const).filter(([, places]) => places > 0),
    );
    const told = Object.fromEntries(Object.entries(elsewhere).map(([path, [places]]) => [path, places]));
    expect(found).toEqual(told);
  });
});
