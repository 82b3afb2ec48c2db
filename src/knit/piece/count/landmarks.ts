import type { PlannedPart } from '../planned.ts';
import type { Edge } from '../recipe.ts';

/** Something that can be seen in the fabric, at the top of a row; rows are counted from there. */
export interface Landmark {
  readonly kind: 'start' | 'fabric' | 'group' | 'spread' | 'lifeline';
  /** rows of the part worked up to it, itself among them; 0: the cast-on, the picked-up edge or the holder */
  readonly row: number;
  /** the section that begins above it ('fabric'), or in which it lies */
  readonly section: number;
  /** where a group was bound off or cast on */
  readonly edge?: Edge;
}

/** What can be seen in the part up to `rows` worked, from the bottom. */
export function landmarksOf(
  part: PlannedPart,
  rows = part.rows.length,
  lifelines: readonly number[] = [],
): readonly Landmark[] {
  const out: Landmark[] = [{ kind: 'start', row: 0, section: 0 }];
  part.sections.forEach((section, i) => {
    const before = part.sections[i - 1];
    if (before && before.fabric !== section.fabric && section.last >= section.first) {
      out.push({ kind: 'fabric', row: section.first - 1, section: i });
    }
  });
  for (const row of part.rows) {
    for (const mark of row.shaping) {
      if (row.after === 0) continue;
      const at = { row: row.n, section: row.section };
      if (mark.kind === 'across') out.push({ kind: 'spread', ...at });
      else if ((mark.kind === 'bind off' || mark.kind === 'cast on') && mark.edge !== 'across') {
        out.push({ kind: 'group', edge: mark.edge, ...at });
      }
    }
  }
  for (const row of lifelines) out.push({ kind: 'lifeline', row, section: part.rows[row - 1]?.section ?? 0 });
  return out.filter((mark) => mark.row <= rows).sort((a, b) => a.row - b.row);
}
