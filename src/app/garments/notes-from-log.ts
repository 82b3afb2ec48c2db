import { parseMakeKey } from '../../progress/log.ts';
import { standing } from '../../progress/standing.ts';
import type { GarmentRecord, RowNote } from '../../store/records.ts';
import { store } from '../store.ts';

/** Her notes on single rows, of every make, as they would travel with the garment. */
export async function notesFromLog({ id, pieces }: GarmentRecord): Promise<readonly RowNote[]> {
  const found = await (await store()).entriesOfGarment(id);
  if (!found.ok) return [];
  return standing(found.value).flatMap((entry): RowNote[] => {
    const make = parseMakeKey(entry.make);
    const recipe = pieces.find((piece) => piece.id === make?.piece)?.recipe;
    const part = recipe?.parts[make?.part ?? -1];
    if (entry.kind !== 'note' || !entry.text || !recipe || !part) return [];
    return [{ piece: recipe.name, part: part.name, row: entry.row + 1, text: entry.text }];
  });
}
