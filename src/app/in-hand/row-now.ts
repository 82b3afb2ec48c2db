import type { PlannedPart, PlannedRow, PlannedSection } from '../../knit/piece/planned.ts';

/** The row that binds off all that is left: an end, not a shaping. */
export const isLastBindOff = (row: PlannedRow): boolean =>
  row.after === 0 && row.shaping.some((mark) => mark.kind === 'bind off' && mark.edge === 'across');

export const isShaping = (row: PlannedRow): boolean => row.shaping.length > 0 && !isLastBindOff(row);

/** The row that comes when `rows` are worked; undefined at the end of the part. */
export const rowAt = (part: PlannedPart, rows: number): PlannedRow | undefined => part.rows[rows];

export const sectionOf = (part: PlannedPart, row: PlannedRow): PlannedSection | undefined =>
  part.sections[row.section];

/** The pattern's own words for a row that nobody could spell out. */
export const ownWordsOf = (part: PlannedPart, row: PlannedRow): string | undefined => {
  const section = sectionOf(part, row);
  return section?.own?.[row.n - section.first + 1];
};

/** The first shaping row after the one in hand. */
export function nextShaping(part: PlannedPart, rows: number): PlannedRow | undefined {
  for (let i = rows + 1; i < part.rows.length; i += 1) {
    const row = part.rows[i];
    if (row !== undefined && isShaping(row)) return row;
  }
  return undefined;
}
