import { expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { type Gauge, heightOf, widthOf } from '../../../src/knit/gauge.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedRow } from '../../../src/knit/piece/planned.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { stitches } from '../../../src/knit/stitch.ts';
import { told } from '../../told.ts';

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
