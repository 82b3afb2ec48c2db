import type { Fault } from '../../fault.ts';
import type { Item } from '../../row/read/notation.ts';
import type { Said, Statement } from '../say/statement.ts';
import type { Build, PartBuild } from './build/build.ts';
import { knownFabric } from './build/fabric.ts';
import { makeWrittenRow } from './build/make-row.ts';
import { MOST_ROWS } from './build/push-row.ts';
import { backgroundEdits, settleBackground } from './build/run-rows.ts';
import { wantSide } from './build/want-side.ts';

export const doRows = (
  build: Build,
  part: PartBuild,
  said: Extract<Statement, { is: 'rows' }>,
  ahead: readonly Said[] = [],
): Fault | undefined => {
  if (beginsPurled(build, part, said) && goesOnKnitted(ahead)) wantSide(build, part, 'WS');
  for (let i = 0; i < Math.min(said.n, MOST_ROWS); i += 1) {
    const wrong = makeWrittenRow(build, part, said.items, 'row', backgroundEdits(build, part));
    if (wrong) return wrong;
    settleBackground(build, part);
  }
  const only = said.items[0];
  // 'knit 81 rows' is garter stitch, and so is what is worked even after it
  if (said.n > 2 && only?.is === 'stitches to' && only.work === 'k') part.fabric = knownFabric('garter');
  return undefined;
};

/** 'Cast on 40 sts. P 1 row. K 1 row.': a single purl row that begins a piece is its wrong side (common practice, no published source). */
const beginsPurled = (
  { recent }: Build,
  { rows, parent }: PartBuild,
  { n, items: [only] }: Extract<Statement, { is: 'rows' }>,
): boolean =>
  rows.length === 0 &&
  parent === undefined &&
  n === 1 &&
  only?.is === 'stitches to' &&
  only.work === 'p' &&
  !recent.some(({ statement }) => statement.is === 'next side');

const goesOnKnitted = (ahead: readonly Said[]): boolean => {
  const next = ahead.find(
    ({ statement: { is } }) => is !== 'note' && is !== 'stated' && is !== 'needle',
  )?.statement;
  if (next?.is === 'even') return next.fabric?.is !== 'named' || next.fabric.name !== 'reverse stocking';
  if (next?.is === 'row' && next.label?.side !== undefined) return false;
  const first = next?.is === 'rows' || next?.is === 'row' ? next.items[0] : undefined;
  return beginsKnitted(first);
};

const beginsKnitted = (first: Item | undefined): boolean =>
  first !== undefined &&
  ('work' in first ? first.work === 'k' : 'items' in first && beginsKnitted(first.items[0]));
