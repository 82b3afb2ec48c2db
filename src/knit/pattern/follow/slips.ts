import { expandRow } from '../../row/expand.ts';
import { shortenWorks } from '../../row/shorten.ts';
import type { Statement } from '../say/statement.ts';
import type { Build, MadeRow } from './build/build.ts';

export type Slips = Extract<Statement, { is: 'slips' }>;

/** Said before any piece it holds for all of them, within one for the rest of it. */
export function doSlips(build: Build, said: Slips): undefined {
  // 'Slip the first st of every row. Knit the last st at the end of every row.'
  build.slips = { said: { ...build.slips?.said, ...said }, piece: build.pending ? undefined : build.piece };
}

/** Rows with their first stitch slipped, and their last one as it was asked for: what the row is otherwise is known by then. */
export function slipFirst({ pieces }: Build): void {
  for (const { parts } of pieces)
    for (const { rows } of parts)
      rows.forEach((row, i) => {
        if (row.slips && row.own === undefined) rows[i] = { ...row, steps: slipped(row, row.slips) };
      });
}

/** A row that begins with a stitch bound off, or with one that is shaped, has none to slip. */
function slipped({ steps, before }: MadeRow, { work, last }: Slips): MadeRow['steps'] {
  const works = [...expandRow(steps, before)];
  const plain = (at: number): boolean => ['k', 'p', 'patt'].includes(works.at(at) ?? '');
  if (works.length < 2 || (!plain(0) && !(last && plain(-1)))) return steps;
  if (work && plain(0)) works[0] = work;
  if (last && plain(-1)) works[works.length - 1] = last;
  return shortenWorks(works);
}
