import { handSeamCalled, jointCalled } from '../../../knit/making-up/joint-called.ts';
import { renamedStep } from '../../../knit/making-up/renamed-step.ts';
import { proposedRole } from '../../../knit/making-up/role.ts';
import type { PieceRole, Recipe } from '../../../knit/piece/recipe.ts';
import type { GarmentRecord, PieceRecord } from '../../../store/records.ts';
import type { PieceEntry } from './garment-form.ts';

/** What hangs on a piece's name stays with the piece when it is called otherwise. */

/**
 * What the piece is, written down for a new one and for one that is called otherwise from now on: what its name
 * proposed before. An old piece that keeps its name stays as it is stored.
 */
export function withRole(recipe: Recipe, before: Recipe | undefined): Recipe {
  if (recipe.role !== undefined || recipe.name === before?.name) return recipe;
  return { ...recipe, role: proposedRole(before?.name ?? recipe.name) };
}

/** What the editor shows of a piece: as she chose, else what saving would write down. */
export const roleShown = ({ id, form }: PieceEntry, stored: GarmentRecord | undefined): PieceRole =>
  form.role ?? proposedRole(stored?.pieces.find((piece) => piece.id === id)?.recipe.name ?? form.name);

/** Ticks of the making up, its joints and weights of finished makes are kept under the names of their pieces. */
export function keptByName(
  { pieces: old, ticked, taken, joints, byHand }: GarmentRecord,
  pieces: readonly PieceRecord[],
): Pick<GarmentRecord, 'ticked' | 'taken' | 'joints' | 'byHand'> {
  const called = new Map(
    pieces.flatMap(({ id, recipe }): [string, string][] => {
      const was = old.find((piece) => piece.id === id)?.recipe.name;
      return was === undefined || was === recipe.name ? [] : [[was, recipe.name]];
    }),
  );
  if (called.size === 0) return {};
  const piece = (name: string) => called.get(name) ?? name;
  const same = (name: string) => name;
  return {
    ...(ticked && { ticked: ticked.map((step) => renamedStep(step, called)) }),
    ...(taken && { taken: taken.map((one) => ({ ...one, piece: piece(one.piece) })) }),
    ...(byHand && { byHand: byHand.map((seam) => handSeamCalled(seam, piece)) }),
    ...(joints && {
      joints: joints.map((joint) => jointCalled(joint, { piece, part: same, section: same })),
    }),
  };
}
