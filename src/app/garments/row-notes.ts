import type { Recipe } from '../../knit/piece/recipe.ts';
import type { RowNote } from '../../store/records.ts';

const rowsOf = (part: Recipe['parts'][number]): number =>
  part.sections.reduce((sum, { rows }) => sum + rows, 0);

/** Notes at the rows of pieces that were drafted again: at the row as far up the same part, under its name. */
export const notesMoved = (
  notes: readonly RowNote[],
  before: readonly Recipe[],
  after: readonly Recipe[],
): readonly RowNote[] =>
  notes.flatMap((note) => {
    const at = before.findIndex(({ name }) => name === note.piece);
    const nth = before[at]?.parts.findIndex(({ name }) => name === note.part) ?? -1;
    const [was, is] = [before[at]?.parts[nth], after[at]?.parts[nth]];
    if (!was || !is) return [];
    const row = Math.max(1, Math.round((note.row * rowsOf(is)) / Math.max(1, rowsOf(was))));
    return [{ ...note, piece: after[at]?.name ?? note.piece, part: is.name, row }];
  });

/** Opened outside the app as a page: https, and no name or password in it. As the store's shape has it. */
export const isSafeAddress = (typed: string): boolean => /^https:\/\/[^\s@/\\]+(?:[/?#]\S*)?$/.test(typed);
