import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('’at each end’, ’at neck edge’, in all its wordings,', () => {
  it.each(
    table(`
      Dec 1 st {at each end|at both ends|each end|each side|at either end|at every end|on each side|at both sides|at each edge|on both edges|at each armhole|at both armhole edges|at each side edge|at each of both ends|at 2 ends|in from each end|along each side|inside each edge|of each end|within each end|at each seam|at each raglan edge|at each underarm|at each outer edge|at each outside edge|at each sleeve edge|at each shoulder edge|at each arm edge|at sides|at beg and end|at beg and at end|at start and at end|at beg and at the end|at beg and the end|from each end|at each side end} of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at the side edge of next row → shape: change -1, edge armhole, beats [{first 1, every 1, times 1}]
      Dec 1 st at {neck edge|front edge|inside edge|inner edge|center edge|v edge|opening edge|neckline edge|neck side|front end|neck opening edge|front opening edge|center front edge|center neck edge|center back edge|front neck edge|v neck edge|front and neck edge|neck|each neck edge|both front edges|each front|each v edge|each neck end} of next row → shape: change -1, edge neck, beats [{first 1, every 1, times 1}]
      Dec 1 st at {armhole edge|arm edge|seam edge|underarm edge|outer edge|outside edge|raglan edge|shoulder edge|sleeve edge|side seam|side seam edge|sides seam|armhole|arm side|side end|armhole side|arm seam edge|outer ends} of next row → shape: change -1, edge armhole, beats [{first 1, every 1, times 1}]
      Dec 1 st at {same edge|same end|same side|this edge|this side|that edge} of next row → shape: change -1, edge same, beats [{first 1, every 1, times 1}]
      Dec 1 st at {beg|start|beginning|right hand end|the beg|a start} of next row → shape: change -1, edge beginning, beats [{first 1, every 1, times 1}]
      Dec 1 st at {end|ends|the end} of next row → shape: change -1, edge end, beats [{first 1, every 1, times 1}]
      Dec 1 st at right {edge|side|hand} of next row → shape: change -1, edge right, beats [{first 1, every 1, times 1}]
      Dec 1 st at left {edge|side|hand} of next row → shape: change -1, edge left, beats [{first 1, every 1, times 1}]
      Dec 1 st at neck edge only of next row → shape: change -1, edge neck, beats [{first 1, every 1, times 1}]
      Dec 1 st at beg and end of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at {each armhole side|each side edges|both side ends} of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at each end of {work|the work|piece|the piece} {every row|each row} → shape: change -1, edge both, beats [{first 1, every 1}]
      Dec 1 st at each end of {work|the work|piece|the piece} {on next row|in next row|next row|of next row} → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at each end of {needle|the needle} on next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Dec 1 st at front edge edge of next row → ✗ stitch or repeat expected @24
      Dec 1 st at beg and at neck edge of next row → shape: change -1, edge beginning, beats [] | ✗ stitch or repeat expected @21
      Dec 1 st at each row → ✗ stitch or repeat expected @10
      Dec 1 st at same row → ✗ stitch or repeat expected @10
      Dec 1 st at corner of next row → ✗ stitch or repeat expected @10
      Dec 1 st at each of them → ✗ stitch or repeat expected @10
      Dec 1 st at each big end of next row → ✗ stitch or repeat expected @10
    `),
  )('is not read for more than it says: $line', expectReading);
});
