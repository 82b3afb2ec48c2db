import { expect, it } from 'vitest';
import { meeting } from '../../../src/app/garments/meeting.ts';
import { ok, type Result } from '../../../src/knit/fault.ts';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import type { Nudge } from '../../../src/knit/piece/regauge/part-in-gauge.ts';
import { groups, part, piece, section, slant, standing } from '../../knit/making-up/by-hand.ts';
import { back, front } from '../../knit/making-up/pullover.ts';
import { drop } from '../../knit/making-up/shapes.ts';

/** A stitch is 4 mm wide and a row 3 mm high. */

const [straightBack, straightFront] = drop as [Recipe, Recipe];
/** So many stitches at its straight top: ten, 40 mm, are eased into the 30 mm of its armhole. */
const arm = (top: number): Recipe =>
  piece('Sleeve', 'sleeve', [part('Sleeve', top - 2, [section('a', 6, slant('both', 1, 3))])], { makes: 2 });
/** A sleeve with a cap of so many rows. */
const capped = (rows: number): Recipe =>
  piece(
    'Sleeve',
    'sleeve',
    [
      part('Sleeve', 12, [
        section('sleeve', 8, slant('both', 1, 3, 5)),
        section('cap', rows, ...groups(1, 3), slant('both', -1, 3, 5)),
      ]),
    ],
    { makes: 2 },
  );

/** What the sleeve comes out as beside a garment that met, and what was asked for on the way. */
function met(
  before: readonly Recipe[],
  sleeve: Recipe,
  made: (nudge: Nudge) => Result<Recipe>,
): { readonly sleeve: Recipe | undefined; readonly asked: readonly string[] } {
  const asked: string[] = [];
  const pieces = meeting({
    pieces: before.map((one) => (one.name === 'Sleeve' ? sleeve : one)),
    joints: proposed(standing(...before)),
    before,
    again: (_, nudges) => {
      const [nudge] = nudges as [Nudge];
      asked.push(`${nudge.section}: ${nudge.rows} rows, ${nudge.times} times`);
      return made(nudge);
    },
  });
  return { sleeve: pieces.find(({ name }) => name === 'Sleeve'), asked };
}

const rowsOf = (...rows: readonly number[]) => rows.map((n) => `1: ${n} rows, 0 times`);

it('a sleeve that meets its armhole is not asked about', () => {
  expect(met(drop, arm(10), () => ok(arm(12)))).toEqual({ sleeve: arm(10), asked: [] });
});

it('a straight top that came out too wide is shaped once less often, or twice where that is not enough', () => {
  const shaped = (top: number) =>
    met([straightBack, straightFront, arm(10)], arm(top), ({ times }) => ok(arm(top + 2 * times)));
  // beside 37.5 mm, with their ease, 56 are too many and 48 are not
  expect(shaped(14)).toEqual({ sleeve: arm(12), asked: ['0: 0 rows, -1 times'] });
  expect(shaped(16)).toEqual({
    sleeve: arm(12),
    asked: ['0: 0 rows, -1 times', '0: 0 rows, 1 times', '0: 0 rows, -2 times'],
  });
});

it('a cap that came out too long loses a few rows, the fewest that help; it stays as it was where none do', () => {
  const made = (rows: number) =>
    met([back, front, capped(6)], capped(rows), (nudge) => ok(capped(rows + nudge.rows)));
  expect(made(10)).toEqual({ sleeve: capped(6), asked: rowsOf(2, -2, 4, -4) });
  const never = made(18);
  expect(never.sleeve).toEqual(capped(18));
  expect(new Set(never.asked)).toEqual(
    new Set([
      ...rowsOf(2, -2, 4, -4, 6, -6, 8, -8),
      ...[-1, 1, -2, 2].map((times) => `1: 0 rows, ${times} times`),
    ]),
  );
});
