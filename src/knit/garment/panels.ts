import type { Recipe } from '../piece/recipe.ts';
import { backPanel, type ClosedPanel, frontPanel } from './closed-panel.ts';
import type { Design } from './design.ts';
import { garmentKinds } from './kinds/garments.ts';
import { type OpenFront, openFront } from './open-front.ts';
import type { PanelCounts } from './panel-counts.ts';
import { knitSides, type Sides } from './sides.ts';
import type { Targets } from './targets.ts';

/** Back and front, with the recipes they make. */
export interface Panels {
  readonly sides: Sides;
  readonly back: ClosedPanel;
  readonly front: ClosedPanel | OpenFront;
  /** the front where it is opened */
  readonly open: OpenFront | undefined;
  readonly recipes: readonly [back: Recipe, front: Recipe];
}

export function* knitPanels(design: Design, targets: Targets, counts: PanelCounts): Generator<void, Panels> {
  const sides = knitSides(design, counts);
  yield;
  const back = backPanel(design, counts, sides);
  yield;
  const backRecipe: Recipe = { name: 'Back', role: 'back', makes: 1, parts: back.parts };
  if (!garmentKinds[design.kind].open) {
    const front = frontPanel(design, counts, sides);
    return {
      sides,
      back,
      front,
      open: undefined,
      recipes: [backRecipe, { name: 'Front', role: 'front', makes: 1, parts: front.parts }],
    };
  }
  const open = openFront(design, targets, counts, sides);
  const frontRecipe: Recipe = { name: 'Front', role: 'front', makes: 2, mirrored: true, parts: open.parts };
  return { sides, back, front: open, open, recipes: [backRecipe, frontRecipe] };
}
