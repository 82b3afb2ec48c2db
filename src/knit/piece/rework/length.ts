import { fault, ok, type Result, refuse } from '../../fault.ts';
import type { PlannedPart } from '../planned.ts';
import type { Section } from '../recipe.ts';
import { withRows } from './lay-anew.ts';
import type { Job } from './replan.ts';
import { splitAt } from './split-at.ts';

/** A piece that measures less than half or more than twice what was planned was measured wrongly. */
const MOST_OFF = 2;

/** Between which two a height lies that can be measured above row `above`, mm. */
export function heightsMeasured(
  part: PlannedPart,
  worked: number,
  above: number,
): { readonly least: number; readonly most: number } {
  const planned = heightOf(part, worked) - heightOf(part, above);
  return { least: planned / MOST_OFF, most: planned * MOST_OFF };
}

/**
 * The rest of the part from what is measured: this piece's row gauge in the fabric in hand follows, and each section
 * still to come gets the rows that bring its end where it was planned, an even number more or fewer, so that every
 * later row keeps its side.
 */
export function byMeasure(
  { base, part, worked }: Job,
  heightMm: number,
  above: number,
): Result<readonly Section[]> {
  const planned = heightOf(part, worked) - heightOf(part, above);
  // where no row lies between, nothing does
  if (!(heightMm > planned / MOST_OFF && heightMm < planned * MOST_OFF)) {
    return refuse(
      fault('measure again', { measuredMm: Math.round(heightMm), plannedMm: Math.round(planned) }),
    );
  }
  const { rest } = splitAt(base, part, worked);
  const last = part.rows[worked - 1];
  const fabric = part.sections[last?.section ?? 0]?.fabric;
  const rowMm = cellHeight(part, last?.section ?? 0) * (heightMm / planned);
  const startMm = heightOf(part, above) + heightMm;
  const out: Section[] = [];
  let atMm = startMm;
  for (const [i, section] of rest.entries()) {
    const index = base.sections.length - rest.length + i;
    const oldMm = cellHeight(part, index);
    const newMm = section.fabric === fabric ? rowMm : oldMm;
    const endMm = heightOf(part, part.sections[index]?.last ?? worked);
    const wanted = i === 0 || hasOnlyAlong(section) ? (endMm - atMm) / newMm : section.rows;
    const rows = sameParity(wanted, section.rows);
    const made = withRows(section, rows);
    if (!made.ok) return made;
    const measured =
      section.fabric === fabric ? { measured: { rowMm: newMm, ...(i === 0 ? { atMm: startMm } : {}) } } : {};
    out.push({ ...made.value, ...measured });
    atMm += rows * newMm;
  }
  return ok(out);
}

/** Groups are laid by the stitch, not by the length: such a section keeps its rows. */
const hasOnlyAlong = (section: Section): boolean =>
  section.shaping.every(
    (shaping) => shaping.kind !== 'bind off' && shaping.kind !== 'cast on' && shaping.kind !== 'turn',
  ) || section.rows > 3 * lastGroup(section);

const lastGroup = (section: Section): number =>
  Math.max(
    0,
    ...section.shaping.flatMap((s) =>
      s.kind === 'bind off' || s.kind === 'cast on' || s.kind === 'turn' ? s.groups.map((g) => g.row) : [],
    ),
  );

/** The nearest whole number that is odd or even as `like` is, not below 0. */
function sameParity(wanted: number, like: number): number {
  const parity = like % 2;
  return Math.max(parity, 2 * Math.round((wanted - parity) / 2) + parity);
}

/** mm above the piece's cast-on when so many rows are worked. */
export const heightOf = (part: PlannedPart, rows: number): number =>
  rows === 0 ? part.base : (part.rows[rows - 1]?.height ?? part.base);

const cellHeight = (part: PlannedPart, section: number): number =>
  part.cells[section]?.height ?? part.cells[part.cells.length - 1]?.height ?? 1;

/** Rows in all that bring a section's end to a height above the part's start, its last row on the side it was. */
export function byHeight({ part }: Job, section: number, heightMm: number): Result<number> {
  const planned = part.sections[section];
  if (!planned || !(heightMm > 0)) {
    return refuse(fault('no stretch ends there', { heightMm: Math.round(heightMm) }));
  }
  const startMm = heightOf(part, planned.first - 1) - part.base;
  const rows = planned.last - planned.first + 1;
  return ok(sameParity((heightMm - startMm) / cellHeight(part, section), rows));
}
