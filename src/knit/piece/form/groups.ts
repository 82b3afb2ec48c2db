import type { Where } from '../../fault.ts';
import type { Side } from '../../row/step.ts';
import type { Group } from '../recipe.ts';
import type { GroupShaping, GroupsForm } from './form.ts';
import { type Report, readList, readWhole } from './number.ts';

/**
 * Groups at one edge, or at both. Groups lie at the start of a row and an RS row starts at the right edge, so of
 * two edges the one that starts row `first` takes its group there and the other one a row later.
 *
 * @param row1 side of the section's row 1
 */
export function readGroups(form: GroupsForm, row1: Side, at: Where, report: Report): readonly GroupShaping[] {
  const { edge, first, every, groups, ...carried } = form;
  const from = readWhole(first, { ...at, field: `${at.field} first` }, report, 1);
  const stitches = readList(groups, { ...at, field: `${at.field} groups` }, report);
  const step = stitches.length < 2 ? 2 : readWhole(every, { ...at, field: `${at.field} every` }, report, 1);
  const listed = (start: number): readonly Group[] =>
    stitches
      // a group is told by these two alone: one more field and the list has no place for it
      .map((count, i): Required<Group> => ({ row: start + i * step, stitches: count }))
      .filter((group) => group.stitches > 0);
  if (edge !== 'both') return [{ ...carried, edge, groups: listed(from) }];
  const [lead, follow] = edgesFrom(form.kind, from, row1);
  return [
    { ...carried, edge: lead, groups: listed(from) },
    { ...carried, edge: follow, groups: listed(from + 1) },
  ];
}

export function writeGroups(shaping: GroupShaping): GroupsForm {
  const { groups, ...carried } = shaping;
  const first = groups[0]?.row;
  if (first === undefined) return { ...carried, first: '1', every: '2', groups: '' };
  const every = groups.map((group) => group.row - first).reduce(commonMeasure, 0) || 2;
  const turns = ((groups.at(-1)?.row ?? first) - first) / every + 1;
  const at = new Map(groups.map((group) => [(group.row - first) / every, group.stitches]));
  const list = Array.from({ length: turns }, (_, i) => at.get(i) ?? 0);
  return { ...carried, first: String(first), every: String(every), groups: list.join(', ') };
}

/** Two shapings that `readGroups` would make of one entry for both edges, said as that entry. */
export function writePair(one: GroupShaping, other: GroupShaping, row1: Side): GroupsForm | undefined {
  const first = one.groups[0]?.row;
  if (first === undefined || one.kind !== other.kind || one.groups.length !== other.groups.length)
    return undefined;
  const [lead, follow] = edgesFrom(one.kind, first, row1);
  if (one.edge !== lead || other.edge !== follow || !sameButGroups(one, other)) return undefined;
  const follows = one.groups.every((group, i) => {
    const later = other.groups[i];
    return later?.row === group.row + 1 && later.stitches === group.stitches;
  });
  return follows ? { ...writeGroups(one), edge: 'both' } : undefined;
}

/** One entry carries for both what it does not show. */
const sameButGroups = (one: GroupShaping, other: GroupShaping): boolean =>
  JSON.stringify({ ...one, edge: '', groups: [] }) === JSON.stringify({ ...other, edge: '', groups: [] });

/** The edge that a group lies at on the row (it starts there; a turn comes before its end), and the next row's. */
function edgesFrom(
  kind: GroupsForm['kind'],
  row: number,
  row1: Side,
): readonly ['right' | 'left', 'right' | 'left'] {
  const isRightSide = (row % 2 === 1) === (row1 === 'RS');
  return isRightSide !== (kind === 'turn') ? ['right', 'left'] : ['left', 'right'];
}

function commonMeasure(a: number, b: number): number {
  return b === 0 ? a : commonMeasure(b, a % b);
}
