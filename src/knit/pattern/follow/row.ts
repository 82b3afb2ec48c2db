import { type Fault, fault } from '../../fault.ts';
import type { Side } from '../../row/step.ts';
import type { Said, Statement } from '../say/statement.ts';
import { type Build, nextSide, type PartBuild, type PieceBuild } from './build/build.ts';
import { allRows } from './build/cycle.ts';
import { knownFabric } from './build/fabric.ts';
import { MOST_ROWS } from './build/push-row.ts';
import { wantSide } from './build/want-side.ts';
import { writtenRow } from './build/written-row.ts';

export type Row = Extract<Statement, { is: 'row' }>;

/** 'Row 3 (RS): …', 'Next row: …', or a row without a label. */
export function doRow(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Row,
  ahead: readonly Said[],
): Fault | undefined {
  const { label } = said;
  const sideWrong =
    label?.side !== undefined && !wantSide(build, part, label.side, label.rows[0] === 2)
      ? wrongSide(part, label.side)
      : undefined;
  if (label === undefined || label.rows.length === 0) {
    // 'All rows: knit' works none, and is what they are from here on
    if (label?.name === 'all') {
      const [only] = said.items;
      const plain = said.items.length === 1 && only?.is === 'stitches to' && only.work === 'k';
      part.fabric = plain
        ? knownFabric('garter')
        : { is: 'rows', rows: [said.items], label: 'pattern', faces: [] };
      part.fabricRow = 0;
      return undefined;
    }
    const name = label?.name ?? (build.inHole ? 'buttonhole' : undefined);
    if (name !== undefined) part.named.set(name, said.items);
    for (let i = 0; i < Math.min(label?.next ?? 1, MOST_ROWS); i += 1) {
      const wrong = writtenRow(build, piece, build.part ?? part, said.items, ahead);
      if (wrong) return wrong;
    }
    return sideWrong;
  }
  return doNumbered(build, piece, part, said, ahead) ?? sideWrong;
}

const wrongSide = (part: PartBuild, side: Side): Fault =>
  fault('side differs', { saidSide: side, foundSide: nextSide(part) });

function doNumbered(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Row,
  ahead: readonly Said[],
): Fault | undefined {
  const label = said.label as NonNullable<Row['label']>;
  const first = label.rows[0] as number;
  const again = part.cycle !== undefined && first <= part.cycle.done && !label.everyOther;
  const repeated = part.cycle?.rows.get(first) === said.items;
  if (first === 1 || part.cycle === undefined || again) {
    // '… 6th row: k. 2nd row: k': a number that was worked already is worked anew
    const rows = new Map(first > 1 ? part.cycle?.rows : []);
    part.cycle = {
      rows,
      passed: [...rows.keys()].filter((n) => n < first).length,
      everyOther: undefined,
      ...(first > 1 && { earlier: allRows(part) }),
      done: first - 1,
      last: 0,
      first: part.rows.length,
      ...(repeated && { repeated }),
    };
  }
  const { cycle } = part;
  label.rows.forEach((n, i) => {
    const like =
      said.like === undefined
        ? said.items
        : (cycle.rows.get(likeOf(said, i)) ??
          (said.like % 2 === 0 ? cycle.everyOther : undefined) ??
          cycle.earlier?.[likeOf(said, i) - 1]);
    if (like) cycle.rows.set(n, like);
    cycle.last = Math.max(cycle.last, n);
  });
  const unknown = label.rows.some((n) => !cycle.rows.has(n)) && cycle.everyOther === undefined;
  if (said.like !== undefined && (!cycle.rows.has(first) || unknown)) {
    return fault('row not known', { rowName: String(said.like) });
  }
  // a text that numbers every row of the part goes on after 'rep rows 1 and 2 8 times more' with row 19
  const filled = cycle.everyOther !== undefined && first === cycle.done + 2;
  if (first === part.rows.length + 1 && first > cycle.done && !filled) cycle.done = first - 1;
  // rows that the text passed over were worked before ('rep rows 1 and 2 8 times more. Row 19: …')
  if (first > cycle.done + 1 && !filled && !cycle.rows.has(cycle.done + 1)) cycle.done = first - 1;
  if (cycle.lost) Object.assign(cycle, { lost: false, first: Math.max(0, part.rows.length - cycle.done) });
  const wrong = flushCycle(build, piece, part, ahead);
  if (label.everyOther) cycle.everyOther = said.items;
  return wrong;
}

/** 'Rows 7-12: as rows 1-4' begins again with row 1. */
export const likeOf = ({ like = 1, likeTo }: Row, i: number): number =>
  likeTo === undefined ? like + i : like + (i % (likeTo - like + 1));

/** Works the rows that are known and due, in their order. */
export function flushCycle(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  ahead: readonly Said[] = [],
): Fault | undefined {
  const { cycle } = part;
  if (!cycle) return undefined;
  while (cycle.done < cycle.last) {
    const n = cycle.done + 1;
    const items = cycle.rows.get(n) ?? cycle.everyOther;
    if (items === undefined) return undefined;
    if (!cycle.rows.has(n)) cycle.rows.set(n, items);
    cycle.done = n;
    const wrong = writtenRow(build, piece, build.part ?? part, items, ahead);
    if (wrong) return wrong;
  }
  return undefined;
}
