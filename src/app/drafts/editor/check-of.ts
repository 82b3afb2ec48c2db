import { checkPiece, type PieceCheck } from '../../../knit/piece/form/check.ts';
import type { PieceForm } from '../../../knit/piece/form/form.ts';

const checked = new WeakMap<PieceForm, PieceCheck>();

/** Counts, plan and faults of a piece; worked out once for each state of its form. */
export function checkOf(form: PieceForm): PieceCheck {
  const known = checked.get(form) ?? checkPiece(form);
  checked.set(form, known);
  return known;
}
