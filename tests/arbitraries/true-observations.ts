import fc from 'fast-check';
import { fabrics } from '../../src/knit/fabric.ts';
import { countAt } from '../../src/knit/piece/count/count-at.ts';
import { landmarksOf } from '../../src/knit/piece/count/landmarks.ts';
import type { Observation } from '../../src/knit/piece/count/observation.ts';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';

/**
 * What a knitter sees who has worked `rows` rows of the part, as she would count it: each of these is true. Counted from
 * the rows' own marks, apart from how Ridgeline looks for them.
 */
export const trueObservations = (part: PlannedPart, rows: number): fc.Arbitrary<readonly Observation[]> =>
  fc
    .record({
      landmark: fc.nat(),
      off: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
      last: fc.boolean(),
      facing: fc.constantFrom('RS' as const, 'WS' as const),
    })
    .chain(({ landmark, off, last, facing }) =>
      fc.shuffledSubarray([...seenAt(part, rows, landmark, off, last, facing)], { minLength: 1 }),
    );

function* seenAt(
  part: PlannedPart,
  rows: number,
  pick: number,
  off: number,
  hidden: boolean,
  facing: 'RS' | 'WS',
): Generator<Observation> {
  const marks = landmarksOf(part, rows);
  const landmark = marks[pick % marks.length]?.row ?? 0;
  const worked = part.rows.slice(0, rows);
  const nextIsRight = (part.rows[rows]?.side ?? (worked.at(-1)?.side === 'RS' ? 'WS' : 'RS')) === 'RS';
  yield { kind: 'stitches', stitches: countAt(part, rows) ?? 0 };
  yield { kind: 'rows above', landmark, rows: rows - landmark };
  yield { kind: 'side', facing, yarn: (facing === 'RS') === nextIsRight ? 'right' : 'left' };
  const above = worked.slice(landmark);
  if (above.every((row) => fabrics[part.sections[row.section]?.fabric ?? 'garter'].rows.length === 2)) {
    const ridges = above.filter((row) => row.side !== facing);
    const isLast = ridges.at(-1) === above.at(-1) && ridges.length > 0;
    yield { kind: 'ridges above', landmark, facing, ridges: ridges.length - (isLast && hidden ? 1 : 0) };
  }
  for (const edge of ['right', 'left'] as const) {
    const shaped = (row: (typeof worked)[number]) =>
      row.shaping.some((mark) => mark.kind === 'edge' && mark.edge === edge);
    yield { kind: 'shapings', edge, landmark, times: above.filter(shaped).length };
    const at = worked.findLastIndex(shaped);
    yield { kind: 'last shaping', edge, rows: at < 0 ? -1 : rows - at - 1 };
    const isGroup = (mark: { kind: string; edge: string }) =>
      mark.edge === edge && (mark.kind === 'bind off' || mark.kind === 'cast on');
    yield { kind: 'groups', edge, times: worked.flatMap((row) => row.shaping).filter(isGroup).length };
  }
  const height = (worked.at(-1)?.height ?? part.base) - part.base;
  yield { kind: 'height', mm: height * (1 + off) };
  yield { kind: 'section', section: worked.at(-1)?.section ?? part.rows[0]?.section ?? 0 };
}
