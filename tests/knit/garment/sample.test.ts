import { expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { type Gauge, heightOf, widthOf } from '../../../src/knit/gauge.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedRow } from '../../../src/knit/piece/planned.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { stitches } from '../../../src/knit/stitch.ts';
import { told } from '../../told.ts';
import { recipeSaid } from './spelled.ts';

const gauge: Gauge = { stitches: 21, rows: 28 };

const planned = (name: string) => {
  const recipe = sampleGarment.pieces.find((piece) => piece.name === name);
  if (recipe === undefined) throw new Error(`no ${name}`);
  const result = plan(recipe);
  if (!result.ok) throw new Error(told(result.faults));
  return result.value;
};

it('plans every piece of the sample, with its parts and makes', () => {
  const pieces = sampleGarment.pieces.map((recipe) => planned(recipe.name));
  expect(pieces.map((piece) => [piece.name, piece.makes, piece.parts.map((part) => part.name)])).toEqual([
    ['Back', 1, ['Back']],
    ['Front', 1, ['Body', 'Left shoulder', 'Right shoulder']],
    ['Sleeve', 2, ['Sleeve']],
    ['Neckband', 1, ['Neckband']],
  ]);
});

const part = (piece: string, index: number) => {
  const found = planned(piece).parts[index];
  if (found === undefined) throw new Error(`no part ${index} of ${piece}`);
  return found;
};

/** Stitches bound off from the first row of the shoulder on. */
const boundAtShoulder = (piece: string, index: number): number => {
  const { rows, sections } = part(piece, index);
  const first = sections.find((section) => section.name.startsWith('shoulder'))?.first ?? Number.NaN;
  const marks = rows.filter((row) => row.n >= first).flatMap((row) => row.shaping);
  return marks.reduce((sum, mark) => sum - mark.by, 0);
};

const lastRowBefore = (rows: readonly PlannedRow[]): number => rows.at(-1)?.before ?? Number.NaN;

// Sums of our own by hand: what is seamed together must agree.
it('binds off as many stitches at each shoulder of the front as at each of the back', () => {
  expect(boundAtShoulder('Back', 0)).toBe(60);
  expect([boundAtShoulder('Front', 1), boundAtShoulder('Front', 2)]).toEqual([30, 30]);
});

it('makes the sleeve as wide at its top as twice the armhole is deep, within 10 mm', () => {
  const { sections } = part('Back', 0);
  const armholes = sections.find((section) => section.name === 'armholes');
  const depthMm = heightOf((armholes?.last ?? 0) - (armholes?.first ?? 0) + 1, gauge);
  expect(lastRowBefore(part('Sleeve', 0).rows)).toBe(106);
  expect(Math.abs(widthOf(106, gauge) - 2 * depthMm)).toBeLessThan(10);
});

it('holds as many stitches at the back neck as the neckband picks up there', () => {
  expect(part('Back', 0).left).toBe(36);
  expect(part('Neckband', 0).start).toBe(48 + 1 + 48 + 36);
  expect(lastRowBefore(part('Neckband', 0).rows)).toBe(133 - 6);
});

it('mitres the neckband about the stitch picked up at the point of the V, a knit stitch on the right side', () => {
  const row = part('Neckband', 0).rows[1];
  expect(row?.side).toBe('RS');
  expect(row?.shaping).toEqual([{ kind: 'middle', edge: 'middle', by: -2 }]);
  const worked = expandRow(row?.steps ?? [], 133);
  const before = worked.slice(0, worked.indexOf('s2kp')).reduce((sum, name) => sum + stitches[name].takes, 0);
  // one stitch of the left neck edge goes into the decrease with the centre
  expect(before).toBe(48 - 1);
});

it('is knitted in the gauge of its washed swatches, to 100 mm, on their needles', () => {
  const { pieces, swatches = [] } = sampleGarment;
  for (const { name, gauge: own, gauges } of pieces) {
    const known = { ...gauges, [own?.fabric ?? '']: own };
    for (const { fabric, stitches: counted, widthMm, rows, heightMm, needle } of swatches) {
      const near = [(counted * 100) / widthMm, (rows * 100) / heightMm].map(Math.round);
      expect([known[fabric]?.stitches, known[fabric]?.rows], `${name} ${fabric}`).toEqual(near);
      if (fabric === own?.fabric) expect(own.needle).toBe(needle);
    }
    expect(gauges?.['rib 1x1 matched']).toEqual(gauges?.['rib 2x2']);
  }
});

// who has begun the sample has it in hand: none of its rows changes by itself
it('has the rows that it has always had', () => {
  const ribbed = 'rib 18 rib 2x2 3.5';
  const side = (from: string, edge: string, rows: number, groups: string) =>
    `shoulder RS = 48 of Body ${from}; neck 58 stocking 4, ${edge}-1 in 1-17/2,21-53/4 inset 2; shoulder ${rows} stocking 4, bind off ${groups}; bind off`;
  const armholes = 'stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 3-11/2 inset 2';
  expect(sampleGarment.pieces.flatMap(recipeSaid)).toEqual([
    'Back: back, 1',
    `Back = 118; ${ribbed}; body 98 stocking 4; armholes 70 ${armholes}; shoulders 6 stocking 4, bind off R 1:10 3:10 5:10, bind off L 2:10 4:10 6:10; hold`,
    'Front: front, 1',
    `Body = 118; ${ribbed}; body 98 stocking 4; armholes 12 ${armholes}; split`,
    `Left ${side('right', 'L', 4, 'R 1:10 3:10')}`,
    `Right ${side('left', 'R', 5, 'L 2:10 4:10')}`,
    'Sleeve: sleeve, 2',
    `Sleeve = 50; ${ribbed}; sleeve 112 stocking 4, +8 across 1, RL+1 in 5-73/4,79-109/6 inset 2; top 8 stocking 4; bind off`,
    'Neckband: neckband, 1',
    'Neckband WS = 48 left front neck + 1 point of the V + 48 right front neck + 36 back neck; band 8 rib 1x1 matched 3.25, mitre at 48 in 2-6/2; bind off',
  ]);
});

it('has swatches in the tension that it is planned in, to a stitch in a hundred, and the label of its yarn', () => {
  const { swatches = [], yarns, name, credits, licence, notes } = sampleGarment;
  const per100 = swatches.map((one) => [
    one.fabric,
    one.needle,
    Math.round((100 * one.stitches) / one.widthMm),
    Math.round((100 * one.rows) / one.heightMm),
  ]);
  expect(per100).toEqual([
    ['stocking', 4, gauge.stitches, gauge.rows],
    ['rib 2x2', 3.5, 24, 30],
  ]);
  // 32 over 152 mm: measured, not reckoned back from the plan
  expect(swatches.map(({ widthMm, heightMm }) => [widthMm, heightMm])).toEqual([
    [152, 150],
    [150, 100],
  ]);
  expect(yarns).toEqual([
    {
      name: 'Quillmere Double',
      fibre: 'Corriedale wool',
      colour: 'wet slate',
      dyeLot: '4',
      grams: 50,
      metres: 120,
      balls: 13,
    },
  ]);
  expect([name, credits, licence]).toEqual([
    'Harbour pullover',
    'Sample garment, numbers of our own',
    'CC0-1.0',
  ]);
  expect(notes).toMatch(/^Sew the right shoulder before the neckband; the left one stays open/);
});
