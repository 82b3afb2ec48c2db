import { makeOf, type StandingGarment } from '../piece/standing.ts';
import { Boundaries, type LaidLine, layLine } from './boundary-of.ts';
import type { Line } from './joint.ts';
import { restOfSide } from './rest-stretch.ts';
import type { WorkedJoint } from './work-making-up.ts';

/**
 * What no seam joins and yet has to be as high: a back and a front above their underarm, up to the shoulder (a seam
 * across it goes on from one into the other), and two bands that lie over each other.
 */
export interface Level {
  readonly of: LevelOf;
  readonly lines: readonly [LaidLine, LaidLine];
}

export type LevelOf = 'above the underarm' | 'bands';

type Pieces = Pick<StandingGarment, 'pieces'>;

export function levelsOf(garment: Pieces, worked: readonly WorkedJoint[]): readonly Level[] {
  const edges = new Boundaries(garment);
  // a raglan's lines go up to the neck, row to row
  const isRaglan = worked.some(({ joint }) => joint.kind === 'seam' && joint.of === 'raglan');
  const bodies = worked.flatMap(({ joint, lines: [a, b] }): Level[] => {
    if (isRaglan || joint.kind !== 'seam' || joint.of !== 'side' || !a || !b) return [];
    const [first, second] = [above(a, garment, edges), above(b, garment, edges)];
    return first && second ? [{ of: 'above the underarm', lines: [first, second] }] : [];
  });
  return [...bodies, ...bandsOf(garment, edges)];
}

/** The edge on from where its side seam ends, through every part that goes on from it there. */
function above({ laid }: LaidLine, { pieces }: Pieces, edges: Boundaries): LaidLine | undefined {
  const last = laid.at(-1);
  if (!last || last.stretch.reversed || (last.stretch.edge !== 'right' && last.stretch.edge !== 'left'))
    return undefined;
  const { piece, make, part, edge } = last.stretch;
  const parts = makeOf(pieces, { piece, make })?.parts;
  const whole = edges.lay({ piece, make, part, edge });
  if (!parts || !whole) return undefined;
  const rest = restOfSide(whole.bits, last.to, whole.bits.length);
  const line: Line[number][] =
    rest && last.to < whole.bits.length ? [{ piece, make, part, edge, ...rest }] : [];
  for (let at = part; ; ) {
    const next = parts.find(({ from }) => 'part' in from && from.part === at && from.edge === edge);
    if (!next) break;
    line.push({ piece, make, part: next.name, edge });
    at = next.name;
  }
  const found = layLine(edges, line);
  return found.missing.length === 0 && found.laid.length > 0 ? found : undefined;
}

/** The two bands of an opened front, of a placket, or of shoulders that lie over each other. */
function bandsOf({ pieces }: Pieces, edges: Boundaries): Level[] {
  return (['front band', 'neckband'] as const).flatMap((role): Level[] => {
    const bands = pieces.filter(({ recipe, makes }) => recipe.role === role && makes.length === 1);
    const [first, second] = bands.map(({ recipe: { name }, makes: [make] }) =>
      layLine(edges, [{ piece: name, make: 1, part: make?.parts[0]?.name ?? '', edge: 'right' }]),
    );
    return bands.length === 2 && first?.laid[0] && second?.laid[0]
      ? [{ of: 'bands', lines: [first, second] }]
      : [];
  });
}
