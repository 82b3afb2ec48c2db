import type { FabricName } from '../../../fabric.ts';
import { expandRow } from '../../../row/expand.ts';
import type { MadeRow } from './build.ts';

/** What is looked at of a row. */
export type Looked = Pick<MadeRow, 'steps' | 'before' | 'side' | 'own' | 'hole'>;

/** How a row looks from the right side: all knit, all purl, or by ones or twos in turn from a column on. */
type Look = { readonly is: 'k' | 'p' } | { readonly is: 'kp' | 'kkpp'; readonly from: number };

/** Stitches at either edge that may be anything: a border, a seam stitch, what a shaping keeps. */
const EDGE = 3;
/** Of fewer stitches nobody tells a rib from a shaping. */
const LEAST = 6;
/** Two ridges are a border in garter stitch; one is none. */
const LEAST_RIDGES = 4;

/**
 * The fabrics that rows spelled out are seen to be, row by row: knit and purl stitches that recur are one whether or not
 * the text gives it a name. Undefined where a row is more than that, or is nothing that has a name.
 */
export function fabricsSeen(rows: readonly Looked[]): readonly (FabricName | undefined)[] {
  const looks = rows.map(lookOf);
  const seen: (FabricName | undefined)[] = rows.map(() => undefined);
  for (const [from, to] of runsOf(looks, ({ is }) => (is.length > 1 ? is : 'plain'))) {
    const run = looks.slice(from, to);
    const names = run[0]?.is.length === 1 ? plainFabrics(rows, run, from) : ribOrMoss(rows, run, from);
    for (const [i, name] of names.entries()) seen[from + i] = name;
  }
  return seen;
}

/** Runs of rows of one kind from the first that tells one; a row that tells nothing belongs to the run that it lies in. */
function* runsOf(
  looks: readonly (Look | undefined)[],
  kind: (look: Look) => string,
): Generator<readonly [number, number]> {
  let first: Look | undefined;
  let from = 0;
  for (const [i, look] of looks.entries()) {
    if (!look || (first && kind(look) === kind(first))) continue;
    if (first) yield [from, i];
    [first, from] = [look, i];
  }
  if (first) yield [from, looks.length];
}

/** Columns that go on upwards are a rib, those that change with every row or two are moss stitch. */
function ribOrMoss(
  rows: readonly Looked[],
  run: readonly (Look | undefined)[],
  first: number,
): (FabricName | undefined)[] {
  const widths = rows.slice(first, first + run.length).map(widthOf);
  const pairs = run.slice(1).flatMap((b, i) => {
    const a = run[i];
    if (!a || !b || !('from' in a) || !('from' in b)) return [];
    return [{ turned: a.from !== b.from, shaped: widths[i] !== widths[i + 1] }];
  });
  // what is shaped at its edges may have its columns elsewhere
  const plain = pairs.filter(({ shaped }) => !shaped);
  const told = plain.length > 0 ? plain : pairs;
  const turned = told.filter((pair) => pair.turned).length;
  const count = rows[first]?.before ?? 0;
  const rib: FabricName = run[0]?.is === 'kkpp' ? 'rib 2x2' : count % 2 === 0 ? 'rib 1x1' : 'rib 1x1 matched';
  const name = 4 * turned > told.length ? 'moss' : rib;
  return run.map(() => name);
}

/** As many as are looked at: two that are worked together look as one. */
const widthOf = ({ steps, before }: Looked): number => expandRow(steps, before).length;

/** Stocking stitch, its other side, or ridges: by how each row looks beside the next. */
function plainFabrics(
  rows: readonly Looked[],
  run: readonly (Look | undefined)[],
  first: number,
): (FabricName | undefined)[] {
  const faces = filled(run.map((look) => look?.is));
  const isReverse = (i: number) => faces[i] === 'p' && (faces[i - 1] === 'p' || faces[i + 1] === 'p');
  const names = faces.map((face, i): FabricName | undefined =>
    isReverse(i) ? 'reverse stocking' : face && 'stocking',
  );
  let from = 0;
  for (let i = 1; i <= faces.length; i += 1) {
    if (i < faces.length && faces[i] !== faces[i - 1]) continue;
    // pairs of rows begin on the right side: what lies at either end of the ridges belongs to its neighbour
    let [a, b] = [from, i];
    if (a > 0 && rows[first + a]?.side === 'WS') a += 1;
    if (b < faces.length && rows[first + b - 1]?.side === 'RS') b -= 1;
    if (b - a >= LEAST_RIDGES) names.fill('garter', a, b);
    from = i;
  }
  return names;
}

/** A row that tells nothing looks as the one two rows before it did. */
function filled<T>(all: readonly (T | undefined)[]): readonly (T | undefined)[] {
  const out: (T | undefined)[] = [];
  for (const [i, one] of all.entries()) out.push(one ?? out[i - 2] ?? out[i - 1]);
  return out;
}

function lookOf({ steps, before, side, own, hole }: Looked): Look | undefined {
  // the words of a buttonhole lie on a row of the fabric
  if (own !== undefined && !hole) return undefined;
  const works = expandRow(steps, before).map((work) => (work === 'k' || work === 'p' ? work : ' '));
  const seen = works.map((work) => (work === ' ' || side === 'RS' ? work : work === 'k' ? 'p' : 'k'));
  const looks = (side === 'RS' ? seen : seen.reverse()).join('');
  const edge = Math.min(EDGE, Math.floor(looks.length / 4));
  const middle = looks.slice(edge, looks.length - edge);
  if (middle.trim().length < LEAST) return undefined;
  if (/^[k ]+$/.test(middle)) return { is: 'k' };
  if (/^[p ]+$/.test(middle)) return { is: 'p' };
  for (const is of ['kp', 'kkpp'] as const)
    for (let from = 0; from < is.length; from += 1)
      if (goesOn(middle, is, from)) return { is, from: (from + is.length * edge - edge) % is.length };
  return undefined;
}

const goesOn = (looks: string, face: string, from: number): boolean =>
  [...looks].every((look, i) => look === face[(i + from) % face.length]);
