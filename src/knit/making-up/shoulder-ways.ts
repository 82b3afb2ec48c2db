import type { Edge, Recipe } from '../piece/recipe.ts';
import { makeOf, type StandingGarment } from '../piece/standing.ts';
import type { Laid, LaidLine } from './boundary-of.ts';
import type { Break } from './break.ts';
import type { Edit } from './edit.ts';
import type { ShoulderFrom } from './edit-shoulder.ts';
import { type Locked, merged, namesAlong, placesIn, rowsEdit, sidesOf } from './ways.ts';

type Pieces = Pick<StandingGarment, 'pieces'>;

/** From the neck first: the panel stays as wide below it. */
const FROM: readonly ShoulderFrom[] = ['neck', 'cast-on'];

/** The other panel's shoulders made as wide, both in one where both are off. */
export function* shoulderWays(
  { pieces }: Pieces,
  group: readonly Break[],
  locked: Locked,
): Iterable<readonly Edit[]> {
  const [first] = group;
  const sides = first && sidesOf(first, locked);
  if (!sides) return;
  const by = sides.kept.stitches - sides.other.stitches;
  const lines = group.flatMap((one) => sidesOf(one, locked)?.other ?? []);
  const piece = lines[0]?.laid[0]?.stretch.piece;
  const found = pieces.find(({ recipe }) => recipe.name === piece);
  if (!found || piece === undefined || by === 0) return;
  const edges = [...new Set(lines.flatMap((line) => edgeOf(line, found.recipe)))].sort();
  for (const from of FROM) yield [{ kind: 'shoulder', piece, edges, by, from }];
}

/** The outer edge of a shoulder, as its recipe has it: a second make may be the mirror image. */
function edgeOf({ laid: [first] }: LaidLine, { mirrored }: Recipe): readonly Edge[] {
  if (!first) return [];
  const { edge, reversed, make } = first.stretch;
  const isLeft = edge === 'left' || (edge === 'top' && reversed === true);
  const isMirrored = mirrored === true && make % 2 === 0;
  return [isLeft === isMirrored ? 'right' : 'left'];
}

/**
 * One side of a panel is higher than before, and the panel that it lies beside has no such side of its own: the other side of
 * both is made as high. Rows that she changed stay as they are.
 */
export function* twinWays(
  { pieces }: Pieces,
  group: readonly Break[],
  locked: Locked,
): Iterable<readonly Edit[]> {
  const [first] = group;
  const sides = first && sidesOf(first, locked);
  if (!sides || first.what.kind !== 'level') return;
  const { now, was } = first.what;
  const by = now - was;
  for (const own of namesAlong(sides.kept)) {
    const twins = placesIn([sides.kept], own).flatMap((place) => {
      const twin = twinOf(place.laid, pieces);
      return twin === undefined ? [] : [{ ...rowsEdit(place, by), part: twin }];
    });
    if (twins.length === 0) continue;
    for (const name of namesAlong(sides.other)) {
      const others = placesIn([sides.other], name).flatMap((place) => {
        const twin = twinOf(place.laid, pieces);
        const all = pieces.find(({ recipe }) => recipe.name === place.laid.stretch.piece)?.makes ?? [];
        const edit = { ...rowsEdit(place, by), makes: all.map(({ make }) => make) };
        return twin === undefined ? [edit] : [edit, { ...edit, part: twin }];
      });
      yield merged([...twins, ...others]);
    }
  }
}

/** The part that goes on from the same one at the other edge. */
function twinOf({ part, stretch: { piece, make } }: Laid, pieces: Pieces['pieces']): string | undefined {
  const parts = makeOf(pieces, { piece, make })?.parts;
  const { from } = part;
  if (!('part' in from) || from.edge === 'middle') return undefined;
  return parts?.find(
    (one) =>
      'part' in one.from &&
      one.from.part === from.part &&
      one.from.edge !== from.edge &&
      one.from.edge !== 'middle',
  )?.name;
}
