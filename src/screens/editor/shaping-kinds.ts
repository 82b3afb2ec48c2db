import type { ShapingKind } from '../../knit/piece/form/fresh.ts';

/** Ways of shaping, each with its name and what it is for. */
export const shapingKinds = [
  ['edge', 'editor.kindEdge', 'editor.kindEdgeHint'],
  ['across', 'editor.kindAcross', 'editor.kindAcrossHint'],
  ['bind off', 'editor.kindBindOff', 'editor.kindBindOffHint'],
  ['cast on', 'editor.kindCastOn', 'editor.kindCastOnHint'],
  ['turn', 'editor.kindTurn', 'editor.kindTurnHint'],
  ['middle', 'editor.kindMiddle', 'editor.kindMiddleHint'],
] as const satisfies readonly (readonly [ShapingKind, string, string])[];
