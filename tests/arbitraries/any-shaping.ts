import fc from 'fast-check';
import type { Group, Recipe, Section, Shaping } from '../../src/knit/piece/recipe.ts';
import { turnWays } from '../../src/knit/piece/turn-way.ts';
import { anyKind, type Fields, madeOf, maybe } from './made-of.ts';
import { someCount } from './typed-fields.ts';

const STITCHES = 120;
const ROWS = 24;

const edge = fc.constantFrom('right' as const, 'left' as const);

/** Rows that rise, as often in a rhythm as not. */
const rows = fc
  .uniqueArray(someCount(1, ROWS - 1), { minLength: 1, maxLength: 9 })
  .map((list) => list.sort((a, b) => a - b));

/** every second row at most: the next one begins at the other edge */
const everySecond = fc
  .uniqueArray(someCount(1, ROWS / 2 - 1), { minLength: 1, maxLength: 6 })
  .map((list) => list.sort((a, b) => a - b).map((turn) => 2 * turn));

const groups = everySecond.chain((list) =>
  fc.tuple(
    ...list.map((row) =>
      madeOf<Group>({ row: fc.constant(row), stitches: someCount(1, 3) } satisfies Fields<Group>),
    ),
  ),
);

const grouped = { edge, groups };

/** One shaping of any kind, for a section of 24 rows that begins on an RS row with some 120 stitches. */
export const anyShaping = (): fc.Arbitrary<Shaping> =>
  anyKind<Shaping>({
    edge: {
      edge: fc.constantFrom('right', 'left', 'both'),
      by: fc.constantFrom(-1, 1),
      rows,
      inset: someCount(0, 3),
      lean: fc.constantFrom('mirrored', 'plain'),
    },
    across: { row: someCount(1, ROWS), by: someCount(-20, 20).filter((by) => by !== 0) },
    middle: { rows: everySecond, from: someCount(30, 50) },
    'bind off': grouped,
    'cast on': grouped,
    turn: { ...grouped, way: maybe(fc.constantFrom(...turnWays)) },
  }).map(whereTheRowBegins);

/** Groups lie where an RS row begins at the right edge, and a WS row at the left one; a turn comes before its end. */
function whereTheRowBegins(shaping: Shaping): Shaping {
  if (!('groups' in shaping)) return shaping;
  const onRs = (shaping.edge === 'right') !== (shaping.kind === 'turn');
  if (!onRs) return shaping;
  return { ...shaping, groups: shaping.groups.map((group) => ({ ...group, row: group.row - 1 })) };
}

/** A piece of one part, each of whose sections is shaped in some way. */
export const shapedInAnyWay = (): fc.Arbitrary<Recipe> =>
  fc.array(anyShaping(), { minLength: 1, maxLength: 3 }).map((list) => {
    const sections = list.map((shaping, i): Section => {
      const name = `section ${i + 1}`;
      return { name, rows: ROWS, fabric: 'stocking', needle: 4, shaping: [shaping] };
    });
    return {
      name: 'Panel',
      makes: 1,
      parts: [{ name: 'panel', from: { castOn: STITCHES }, sections, end: 'bind off' }],
    };
  });
