import type { FabricName } from '../../src/knit/fabric.ts';
import type { PlannedPart, PlannedRow } from '../../src/knit/piece/planned.ts';
import type { PartRecipe, Recipe } from '../../src/knit/piece/recipe.ts';
import { printRow } from '../../src/knit/row/print.ts';
import { type Face, type Knitted, knitRow, type Loop } from './knit-row.ts';
import { meaningOf } from './meaning.ts';

type Side = 'RS' | 'WS';

/**
 * What each fabric shows on the right side, by the column from the right edge: knit every row; knit RS and purl WS,
 * its back; ribs k1 p1 and k2 p2; moss (US: seed) with a knit over every purl. Begin to Knit, Star Book No. 201,
 * American Thread Co. (PG 61105), pp. 5–7 (garter, stockinette, ribs, seed stitch).
 */
export const faceOf: Readonly<Record<FabricName, (column: number, side: Side) => Face>> = {
  garter: (_, side) => (side === 'RS' ? 'k' : 'p'),
  stocking: () => 'k',
  'reverse stocking': () => 'p',
  'rib 1x1': (column) => (mod(column, 2) === 0 ? 'k' : 'p'),
  'rib 1x1 matched': (column) => (mod(column, 2) === 0 ? 'k' : 'p'),
  'rib 2x2': (column) => (mod(column, 4) < 2 ? 'k' : 'p'),
  moss: (column, side) => (mod(column, 2) === (side === 'RS' ? 0 : 1) ? 'k' : 'p'),
};

const mod = (n: number, of: number): number => ((n % of) + of) % of;

/** A loop with the columns of the fabric that it may stand in; where a decrease closed two, either goes on. */
interface Standing {
  readonly columns: readonly number[];
  readonly face: Face | undefined;
}

/** A row as the knitter made it out of its printed words, with the row it lies on. */
export interface KnittedRow {
  readonly row: PlannedRow;
  readonly inSection: number;
  readonly recipe: PartRecipe;
  readonly knitted: Knitted;
  /** stitches that do not show what their fabric shows there, counted from the right edge */
  readonly amiss: readonly string[];
}

interface Rested {
  loops: readonly Standing[];
  fabric: FabricName | undefined;
  taken: { right: number; middle: number; left: number };
}

/**
 * Knits a planned piece by its printed words and follows each column of its fabric through shapings, splits and
 * increases: a decrease closes a column, an increase pushes what lies between it and the edge outward, a new fabric
 * and a row with increases or decreases all over it are counted anew from the right edge.
 */
export function knitPiece(recipe: Recipe, parts: readonly PlannedPart[]): KnittedRow[] {
  const rested = new Map<string, Rested>();
  return parts.flatMap((part, i) => {
    const own = recipe.parts[i];
    if (!own) throw new Error('a part without a recipe');
    const cloth = new Cloth(part, own, startOf(part, recipe, rested));
    const rows = part.rows.map((row) => cloth.knit(row));
    rested.set(part.name, { ...cloth.atRest(), taken: { right: 0, middle: 0, left: 0 } });
    return rows;
  });
}

function startOf(part: PlannedPart, recipe: Recipe, rested: ReadonlyMap<string, Rested>) {
  const { from } = part;
  const parent = 'part' in from ? rested.get(from.part) : undefined;
  if (!('part' in from) || !parent) return { loops: fresh(part.start), fabric: undefined };
  const rightOnes = recipe.parts.reduce(
    (sum, { from: f }) => sum + ('part' in f && f.part === from.part && f.edge === 'right' ? f.stitches : 0),
    0,
  );
  const { taken, loops, fabric } = parent;
  const first = {
    right: taken.right,
    middle: rightOnes + taken.middle,
    left: loops.length - taken.left - from.stitches,
  }[from.edge];
  taken[from.edge] += from.stitches;
  return { loops: loops.slice(first, first + from.stitches), fabric };
}

const fresh = (count: number): Standing[] =>
  Array.from({ length: count }, (_, i) => ({ columns: [i], face: undefined }));

const anew = (loops: readonly Standing[]): Standing[] => loops.map(({ face }, i) => ({ columns: [i], face }));

class Cloth {
  private loops: readonly Standing[];
  private fabric: FabricName | undefined;
  private section = -1;

  constructor(
    private readonly part: PlannedPart,
    private readonly recipe: PartRecipe,
    start: { loops: readonly Standing[]; fabric: FabricName | undefined },
  ) {
    this.loops = start.loops;
    this.fabric = start.fabric;
  }

  atRest() {
    return { loops: this.loops, fabric: this.fabric };
  }

  knit(row: PlannedRow): KnittedRow {
    if (row.section !== this.section) this.beginSection(row);
    const knitted = knitRow(printRow(row.steps), row.side, this.loops);
    const { loops } = knitted;
    const plain = this.look(row, loops);
    const across = row.shaping.some(({ kind }) => kind === 'across');
    this.loops = across ? anew(loops.map(bare)) : this.stand(loops, row.side);
    const amiss = across ? plain : [...plain, ...this.lookAtShaped(row, loops)];
    const inSection = row.n - (this.part.sections[row.section]?.first ?? 1) + 1;
    return { row, inSection, recipe: this.recipe, knitted, amiss };
  }

  private beginSection(row: PlannedRow): void {
    this.section = row.section;
    const own = this.recipe.sections[row.section];
    const fabric = own?.words ? undefined : this.part.sections[row.section]?.fabric;
    if (fabric === undefined || fabric !== this.fabric) this.loops = anew(this.loops);
    this.fabric = fabric;
  }

  /** A plain stitch shows what the column that it is worked in shows. */
  private look(row: PlannedRow, loops: readonly Loop[]): string[] {
    const plain = (loop: Loop) => meaningOf(loop.by).is === 'plain';
    return this.strange(row, loops, plain, ({ from }) => this.loops[from[0] ?? -1]?.columns ?? []);
  }

  /** A stitch made between two, or out of two, shows what the column shows in which it stands from now on. */
  private lookAtShaped(row: PlannedRow, loops: readonly Loop[]): string[] {
    const shaped = ({ by, from }: Loop) =>
      (from.length === 0 && meaningOf(by).is !== 'cast on') || (from.length === 2 && by !== 'kfb');
    return this.strange(row, loops, shaped, (_, i) => this.loops[i]?.columns ?? []);
  }

  private strange(
    { n, side }: PlannedRow,
    loops: readonly Loop[],
    which: (loop: Loop) => boolean,
    columnsOf: (loop: Loop, i: number) => readonly number[],
  ): string[] {
    const { fabric } = this;
    if (fabric === undefined) return [];
    return loops.flatMap((loop, i) => {
      if (!which(loop)) return [];
      const shows = columnsOf(loop, i).map((column) => faceOf[fabric](column, side));
      if (loop.face && shows.includes(loop.face)) return [];
      // the columns of moss change with each row: a decrease along its edge is a knit stitch in all of them
      if (fabric === 'moss' && loop.from.length > 1 && loop.face === 'k') return [];
      return [
        `row ${n} (${side}), stitch ${i + 1} of ${loops.length}, ${loop.by}: ${loop.face} in ${fabric}`,
      ];
    });
  }

  /** The columns in which the loops of the row stand now. */
  private stand(loops: readonly Loop[], side: Side): Standing[] {
    const standing = loops.map((loop, i) => this.standOne(loops, loop, i, side));
    const [first, last] = bodyOf(standing);
    const out = standing.map((one) => one ?? { columns: [], face: undefined });
    for (let i = first - 1; i >= 0; i -= 1) out[i] = beside(out[i], out[i + 1], -1);
    for (let i = last + 1; i < out.length; i += 1) out[i] = beside(out[i], out[i - 1], 1);
    return out;
  }

  /** undefined for a new loop, whose column is the next one outward */
  private standOne(loops: readonly Loop[], loop: Loop, i: number, side: Side): Standing | undefined {
    const { from, face, by } = loop;
    const below = from[0];
    if (below === undefined) return undefined;
    // of the loops made out of one, the innermost goes on in its column
    const inner = i < loops.length / 2 ? loops[i + 1] : loops[i - 1];
    if (meaningOf(by).makes > meaningOf(by).takes && inner?.from[0] === below) return undefined;
    const columns = from.flatMap((place) => this.loops[place]?.columns ?? []);
    if (meaningOf(by).is !== 'plain' || !this.fabric) return { columns, face };
    const { fabric } = this;
    return { columns: columns.filter((column) => faceOf[fabric](column, side) === face), face };
  }
}

const bare = ({ face }: Loop): Standing => ({ columns: [], face });

/** Next to its inner neighbour, in whichever of its columns that stands. */
const beside = (one: Standing | undefined, inner: Standing | undefined, by: 1 | -1): Standing => ({
  columns: inner?.columns.map((column) => column + by) ?? [],
  face: one?.face,
});

/** First and last loop of the widest stretch without a new one: what lies outside it is pushed outward. */
function bodyOf(standing: readonly (Standing | undefined)[]): readonly [number, number] {
  let best: readonly [number, number] = [0, -1];
  let first = 0;
  for (let i = 0; i <= standing.length; i += 1) {
    if (i < standing.length && standing[i] !== undefined) continue;
    if (i - first > best[1] - best[0] + 1) best = [first, i - 1];
    first = i + 1;
  }
  return best;
}
