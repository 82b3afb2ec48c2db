import type { PartRecipe, Section, Shaping } from '../piece/recipe.ts';
import { layAnew } from '../piece/rework/lay-anew.ts';
import { put } from '../piece/rework/put.ts';

/**
 * More increases (or decreases, from the top down) at both edges of the section that has most of them. A sleeve that runs
 * straight gets them in its longest section.
 */
export function widened(part: PartRecipe, by: number, isTopDown = false): PartRecipe | undefined {
  if (by % 2 !== 0) return undefined;
  const slants = part.sections.flatMap(({ shaping }, section) =>
    shaping.flatMap((one, i) =>
      one.kind === 'edge' && one.edge === 'both' && Math.abs(one.by) === 1 ? [{ one, section, i }] : [],
    ),
  );
  const [most] = [...slants].sort((a, b) => b.one.rows.length - a.one.rows.length);
  const section = most && part.sections[most.section];
  if (!most || !section) return fromStraight(part, by, isTopDown);
  const fromTop = most.one.by < 0;
  if (fromTop && !('castOn' in part.from)) return undefined;
  const times = most.one.rows.length + by / 2;
  const laid = times < 0 ? undefined : layAnew(most.one.rows, section.rows, section.rows, times);
  if (!laid?.ok) return undefined;
  const shaping =
    times === 0
      ? section.shaping.filter((one) => one !== most.one)
      : put(section.shaping, most.i, { ...most.one, rows: laid.value });
  const from = fromTop && 'castOn' in part.from ? { ...part.from, castOn: part.from.castOn + by } : part.from;
  return { ...part, from, sections: put(part.sections, most.section, { ...section, shaping }) };
}

function fromStraight(part: PartRecipe, by: number, isTopDown: boolean): PartRecipe | undefined {
  const { sections, from } = part;
  const isPlain = sections.every(({ shaping }) => shaping.every(({ kind }) => kind === 'across'));
  const [longest = 0] = sections.map((_, i) => i).sort((a, b) => rowsAt(part, b) - rowsAt(part, a));
  const section = sections[longest];
  if (!isPlain || !section || (isTopDown && !('castOn' in from))) return undefined;
  const laid = layAnew(alongAll(section), section.rows, section.rows, Math.abs(by) / 2);
  if (!laid.ok) return undefined;
  const one = by > 0 !== isTopDown ? 1 : -1;
  const slant: Shaping = {
    kind: 'edge',
    edge: 'both',
    by: one,
    rows: laid.value,
    inset: 1,
    lean: 'mirrored',
  };
  return {
    ...part,
    from: isTopDown && 'castOn' in from ? { castOn: from.castOn + by } : from,
    sections: put(sections, longest, { ...section, shaping: [...section.shaping, slant] }),
  };
}

const rowsAt = ({ sections }: PartRecipe, i: number): number => sections[i]?.rows ?? 0;

/** As if one were shaped in its first row and one in its last but one: on right-side rows from end to end. */
const alongAll = ({ rows }: Section): readonly number[] => [3, Math.max(3, rows - 1 - (rows % 2))];
