import { fault, ok, type Result, refuse } from '../../fault.ts';
import { stitchesNamed } from '../../row/stitches-of-steps.ts';
import type { PlannedPart, PlannedRow } from '../planned.ts';
import type { Section } from '../recipe.ts';
import { YarnEnd } from '../yarn-end.ts';
import { type Job, type Rework, replan } from './replan.ts';
import { splitAt } from './split-at.ts';

/**
 * The first row still to be knitted that cannot be begun, since the yarn hangs elsewhere: shoulders in short rows were
 * once planned to be bound off in the row after the last turn. Undefined where all of them can.
 */
export function rowOutOfReach(part: PlannedPart, worked: number): PlannedRow | undefined {
  if (!part.rows.some(({ n, shaping }) => n > worked - 1 && shaping.some(({ kind }) => kind === 'turn')))
    return undefined;
  const yarn = new YarnEnd();
  return part.rows.find((row) => !yarn.goesOn(row) && row.n > worked);
}

/** Rows after the last turn: one back from it, and one over all stitches that closes every gap. */
const CLOSING_ROWS = 2;

/** The shoulder with the rows that close its turns, before it is bound off or rests; what is knitted stays. */
export function shoulderAnew(job: Job): Result<Rework> {
  const { base, part, worked } = job;
  if (!rowOutOfReach(part, worked)) return refuse(fault('nothing left'));
  const { done, rest } = splitAt(base, part, worked);
  const sections = rest.flatMap(withClosingRows);
  const made = replan(job, new Map([[job.index, { ...base, sections: [...done, ...sections] }]]), {
    code: 'shoulder',
    figures: {},
  });
  const own = made.ok ? made.value.parts.find(({ index }) => index === job.index)?.part : undefined;
  // the yarn cut and joined anew in the middle of a shoulder is no way to finish it
  const isCut = own?.rows.some(({ n, steps }) => n > worked && stitchesNamed(steps).includes('join yarn'));
  if (!made.ok) return made;
  return own && !isCut && !rowOutOfReach(own, worked) ? ok(made.value) : refuse(fault('nothing left'));
}

/** A stretch without a turn is worked over all stitches again; it bears the shoulder's name, by which it is sewn. */
function withClosingRows(section: Section): readonly Section[] {
  if (!section.shaping.some(({ kind }) => kind === 'turn')) return [section];
  const { name, fabric, needle } = section;
  return [section, { name, fabric, needle, rows: CLOSING_ROWS, shaping: [] }];
}
