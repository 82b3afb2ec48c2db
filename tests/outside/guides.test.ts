import { describe, expect, it } from 'vitest';
import { fabricNames } from '../../src/knit/fabric.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { makingUp } from '../../src/knit/making-up/making-up.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { countAt } from '../../src/knit/piece/count/count-at.ts';
import { explainCount } from '../../src/knit/piece/explain-count.ts';
import { findPlace } from '../../src/knit/piece/find-place.ts';
import type { Garment } from '../../src/knit/piece/garment.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';
import type { Recipe, Shaping } from '../../src/knit/piece/recipe.ts';
import { rework } from '../../src/knit/piece/rework.ts';
import { taper } from '../../src/knit/shape/taper.ts';
import { writePattern } from '../../src/knit/written/write-pattern.ts';
import { told } from '../told.ts';
import { hoodedJacket, womansJacket } from './patterns/bulkies-006.ts';
import { bolero, pinkAndWhite } from './patterns/star-223-220.ts';

function partOf(recipe: Recipe): PlannedPart {
  const made = plan(recipe);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts[0] as PlannedPart;
}

const panel = (fabric: (typeof fabricNames)[number], castOn: number, rows: number, shaping: Shaping[] = []) =>
  ({
    name: 'Panel',
    makes: 1,
    parts: [
      {
        name: 'body',
        from: { castOn },
        end: 'hold',
        sections: [{ name: 'body', rows, fabric, needle: 4, shaping }],
      },
    ],
  }) satisfies Recipe;

/** Boy's hooded jacket, Bulkies, Book No. 006 (PG 66271), size 7: a sleeve of 25, one at each end on rows 25, 30 ... 80. */
const printedSleeve = panel('stocking', 25, 90, [
  {
    kind: 'edge',
    edge: 'both',
    by: 1,
    rows: Array.from({ length: 12 }, (_, i) => 25 + 5 * i),
    inset: 1,
    lean: 'mirrored',
  },
]);

describe('a count that does not agree, by the books on mending', () => {
  // B. Breiter (author of The Complete Idiot's Guide to Knitting & Crocheting), column of The Weekly Stitch, Lion Brand:
  // count every row, and you know at once whether a stitch was dropped or the yarn looped over the needle.
  // 'Knitting instructions: fixing mistakes', lifestyle.howstuffworks.com: fewer stitches than there should be may be a
  // dropped one.
  it.each(fabricNames)(
    '%s without shaping: one too few is a dropped stitch, one too many a yarn-over',
    (fabric) => {
      const part = partOf(panel(fabric, fabric === 'rib 1x1 matched' ? 61 : 60, 80));
      const count = countAt(part, 60) ?? 0;
      const checks = [{ row: 40, count }];
      expect(explainCount(part, 60, count - 1, { checks })[0]?.cause).toBe('stitch dropped');
      expect(explainCount(part, 60, count + 1, { checks })[0]?.cause).toBe('stray yarn-over');
    },
  );
});

describe('finding the place, by what books print', () => {
  // Handbook of Wool Knitting and Crochet, 1918 (PG 26113): 48 ribs, or 96 rows; Begin to Knit, p. 5 (PG 61105): a ridge
  // is two rows of garter stitch
  it('48 ridges of garter stitch are 96 rows, the yarn back where it was cast on', () => {
    const part = partOf(panel('garter', 56, 200));
    const found = findPlace(part, [
      { kind: 'ridges above', landmark: 0, ridges: 48, facing: 'RS' },
      { kind: 'side', facing: 'RS', yarn: 'right' },
    ]);
    expect(found.rows).toContain(96);
    expect(Math.max(...found.rows) - Math.min(...found.rows)).toBeLessThanOrEqual(2);
  });

  it('37 stitches of the printed sleeve are its sixth increase, row 50, and the four rows after it', () => {
    const found = findPlace(partOf(printedSleeve), [{ kind: 'stitches', stitches: 37 }]);
    expect([...found.rows].sort((a, b) => a - b)).toEqual([50, 51, 52, 53, 54]);
  });
});

describe('planned anew, with what is printed as the end', () => {
  it('two stitches short at row 50, the sleeve still has its 49 by row 80', () => {
    const part = partOf(printedSleeve);
    const short = (countAt(part, 50) ?? 0) - 2;
    const made = rework(printedSleeve, 0, part, 50, { kind: 'accept', stitches: short });
    if (!made.ok) throw new Error(told(made.faults));
    const rest = made.value.parts[0]?.part.rows ?? [];
    expect(rest[79]?.after).toBe(49);
    expect(rest).toHaveLength(90);
  });

  // forum.knittinghelp.com/t/11151: ten increases, the first at once, over 68 rows instead of 55
  it('ten increases over 68 rows, the first on row 1: every 8th row 4 times, then every 7th row 5 times', () => {
    const laid = taper({ rows: 68, times: 10, first: 1, step: 1, order: 'longer first' });
    expect(laid).toMatchObject({
      ok: true,
      value: {
        first: 1,
        runs: [
          { every: 8, times: 4 },
          { every: 7, times: 5 },
        ],
      },
    });
  });

  // designyourownsweater.blogspot.com, January 2007: 72 to 156 stitches over 176 rows
  it('42 increases over 176 rows: every 4th row 34 times, then every 5th row 8 times', () => {
    const laid = taper({ rows: 176, times: 42, step: 1, order: 'shorter first' });
    expect(laid).toMatchObject({
      ok: true,
      // the first of the 34 stands apart
      value: {
        first: 4,
        runs: [
          { every: 4, times: 33 },
          { every: 5, times: 8 },
        ],
      },
    });
  });

  // studio-miranda.com, September 2015: 25 increase rows in 166, the last interval (6 rows) kept plain, on every second
  // row only; its 160 rows divide into intervals of 6 and 8
  it('25 increases over 160 rows on every second row: intervals of 8 five times and of 6 twenty times', () => {
    const laid = taper({ rows: 160, times: 25, step: 2, on: 'even' });
    if (!laid.ok) throw new Error(told(laid.faults));
    const gaps = laid.value.rows.map((row, i) => row - (laid.value.rows[i - 1] ?? 0));
    expect(gaps.filter((gap) => gap === 8)).toHaveLength(5);
    expect(gaps.filter((gap) => gap === 6)).toHaveLength(20);
  });
});

describe('making up, by the books on finishing', () => {
  const stepsOf = (garment: Garment) => {
    const made = makingUp(garment);
    if (!made.ok) throw new Error(told(made.faults));
    return made.value;
  };
  const read = (text: string): Garment => ({
    name: 'Read',
    pieces: readPattern(text).pieces.map(({ recipe }) => recipe),
  });

  // Men's Sleeveless Sweater No. 201, Hilde vol. 55; Man's Sweater No. 33, Doreen vol. 103; American Thread, Mood
  // Fashions: each sews the shoulders before the band is picked up and before any other seam
  it.each([
    ['the sample', sampleGarment],
    ['the pink and white sweater (PG 66272)', read(pinkAndWhite.text)],
  ] as const)('%s: shoulders come before the neck, the sleeves and the sides', (_, garment) => {
    const kinds = stepsOf(garment).map(({ kind }) => kind);
    const shoulders = kinds.indexOf('shoulders');
    expect(shoulders).toBeGreaterThan(0);
    for (const later of ['pick up', 'neck edge', 'set in sleeves', 'side seams', 'sleeve seams'] as const) {
      if (kinds.includes(later)) expect(kinds.indexOf(later), later).toBeGreaterThan(shoulders);
    }
  });

  // Craft Yarn Council, Certified Instructors Program, 'Seaming' (2006): match stitch to stitch at shoulders and row to
  // row at the sides; extra rows are eased in
  it('published backs and fronts match: stitch to stitch at the shoulders, row to row at the sides', () => {
    const steps = stepsOf(read(pinkAndWhite.text));
    expect(steps.find(({ kind }) => kind === 'shoulders')).toMatchObject({
      stitches: { first: 16, second: 16, difference: 0 },
    });
    expect(steps.find(({ kind }) => kind === 'side seams')).toMatchObject({ rows: { difference: 0 } });
  });

  // J. Furlong, 'How to finish your knitting', gathered.how: the middle of the sleeve's top goes to the shoulder seam,
  // then each half is sewn by points that are marked on both edges
  it('the sleeve’s middle goes to the shoulder, and its quarters to the quarters of the armhole', () => {
    const sleeves = stepsOf(sampleGarment).find(({ kind }) => kind === 'set in sleeves');
    if (sleeves?.kind !== 'set in sleeves') throw new Error('no sleeves');
    const { quarters, markerRows } = sleeves;
    expect(quarters).toHaveLength(3);
    quarters.forEach((rows, i) => {
      expect(Math.abs(rows - ((i + 1) * markerRows) / 4)).toBeLessThanOrEqual(0.5);
    });
  });
});

describe('a written pattern states what the leaflet states', () => {
  const written = (text: string, size: number): string => {
    const pieces = readPattern(text, { size }).pieces.map(({ recipe }) => recipe);
    const made = writePattern({ name: 'Written', pieces });
    if (!made.ok) throw new Error(told(made.faults));
    return made.value.replaceAll('\n', ' ');
  };
  /** counts as printed, in their order in the back: cast on, then left on the needle */
  const backs = [
    ['boy’s hooded jacket (PG 66271)', hoodedJacket.text, 0, [57, 49, 19]],
    ['the same, size 12', hoodedJacket.text, 3, [65, 57, 21]],
    ['woman’s knitted jacket (PG 66271)', womansJacket.text, 0, [75, 71, 51]],
    ['Tyrolean bolero (PG 65789)', bolero.text, 0, [74, 84, 68]],
    ['the same, large', bolero.text, 2, [82, 96, 80]],
    ['pink and white sweater (PG 66272)', pinkAndWhite.text, 1, [72, 60, 24]],
  ] as const;

  it.each(backs)(
    '%s: every printed count of the back, in its order',
    (_, text, size, [castOn, ...counts]) => {
      const pattern = counts.map((count) => `(?:\\(| to )${count} sts\\b`).join('.*');
      expect(written(text, size)).toMatch(new RegExp(`cast on ${castOn} sts\\..*${pattern}`));
    },
  );
});
