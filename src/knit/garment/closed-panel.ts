import type { PartEnd, PartRecipe } from '../piece/recipe.ts';
import type { Design } from './design.ts';
import { heldNeck } from './held-neck.ts';
import { armholes } from './kinds/armholes.ts';
import { BACK_NECK, type NeckEdge, necks } from './kinds/necks.ts';
import { shoulderFacts } from './kinds/shoulders.ts';
import { besideNeck, knitNeck, type Neck, type NeckWish, withOpening } from './neck.ts';
import { openingPairs } from './neck-opening.ts';
import { cutPart, type PanelEdge, stepsAlong } from './panel.ts';
import type { PanelCounts } from './panel-counts.ts';
import { placketStitches } from './placket.ts';
import { countBefore, type Sides } from './sides.ts';

/** A back, or a front without an opening: symmetrical, with a neck that parts it in two. */
export interface ClosedPanel {
  readonly parts: readonly PartRecipe[];
  readonly edges: readonly PanelEdge[];
  readonly neck: Neck | undefined;
}

/** Stitches that a raglan front keeps at its top, so that its last decreases have something to stand on. */
export const RAGLAN_TIP = 2;

export function backPanel(design: Design, counts: PanelCounts, sides: Sides): ClosedPanel {
  const neck =
    counts.pairs.backNeck > 0 && !armholes[design.armhole].toNeck
      ? closedNeck(BACK_NECK, counts, sides, counts.pairs.backNeck, counts.neck / 2)
      : undefined;
  return closedPanel(design, 'Back', counts, sides, neck, ['right shoulder', 'left shoulder'], {
    rests: heldNeck(design).back,
    opening: openingPairs(design, counts, 'back'),
    level: counts.neck % 2,
  });
}

export function frontPanel(design: Design, counts: PanelCounts, sides: Sides): ClosedPanel {
  const { toNeck, frontParts } = armholes[design.armhole];
  const top = counts.neck / 2 - (toNeck ? RAGLAN_TIP : 0);
  const neck =
    counts.pairs.neck > 0
      ? closedNeck(
          necks[design.neck.shape],
          counts,
          sides,
          counts.pairs.neck,
          top,
          besideNeck(design, sides.edges),
        )
      : undefined;
  const opening = openingPairs(design, counts, 'front');
  const level = neck && opening > 0 ? placketStitches(design, counts, neck) : 0;
  const middle = { rests: heldNeck(design).front, opening, level };
  return closedPanel(design, 'Front', counts, sides, neck, frontParts, middle);
}

const closedNeck = (
  shape: NeckEdge,
  { gauge, neck }: PanelCounts,
  sides: Sides,
  pairs: number,
  end: number,
  beside?: NeckWish['beside'],
): Neck => knitNeck({ shape, gauge, from: sides.pairs - pairs, pairs, start: (neck % 2) / 2, end, beside });

interface Middle {
  /** it rests for the band */
  readonly rests: boolean;
  /** pairs of rows below the neck in which the panel is parted */
  readonly opening: number;
  /** stitches bound off where it is parted */
  readonly level: number;
}

/** @param names of the parts at the right and left edge (right side facing), as worn */
function closedPanel(
  design: Design,
  name: string,
  counts: PanelCounts,
  sides: Sides,
  neck: Neck | undefined,
  names: readonly [string, string],
  { rests, opening, level: parted }: Middle,
): ClosedPanel {
  const { stretches, steps, pairs } = sides;
  const castOn = counts.pairs.hem > 0 ? counts.hem : counts.low;
  const body = (end: PartEnd, to: number): PartRecipe =>
    cutPart(stretches, {
      name,
      from: { castOn },
      end,
      pairs: [0, to],
      right: steps,
      left: steps,
      stitches: castOn,
    });
  if (!neck) {
    // a raglan's back has no shoulders: all that is left at its top is neck
    const end = rests && counts.shoulder.length === 0 && name === 'Back' ? 'hold' : 'bind off';
    return { parts: [body(end, pairs)], edges: sides.edges, neck };
  }
  const parting = opening > 0 ? withOpening(neck, opening, parted / 2) : neck;
  const { from } = parting.edge;
  const stitches = (countBefore(counts, steps, from) - parting.middle) / 2;
  const neckSteps = stepsAlong([parting.edge]);
  const inRow = boundOffInRow(parting.middle, opening > 0 || rests);
  const level = { pair: from, by: -inRow, as: 'group' } as const;
  const side = (edge: 'right' | 'left', partName: string): PartRecipe => {
    const taken = stitches + (edge === 'left' ? inRow : 0);
    return cutPart(stretches, {
      name: partName,
      from: { part: name, stitches: taken, edge },
      end: 'bind off',
      pairs: [from, pairs],
      right: edge === 'right' ? steps : inRow > 0 ? [level, ...neckSteps] : neckSteps,
      left: edge === 'right' ? neckSteps : steps,
      stitches: taken,
      extraRow: edge === 'left' && counts.shoulder.length > 1 && !shoulderFacts(design.shoulder).turns,
    });
  };
  const parts = [
    body('split', from),
    side('right', names[0]),
    ...(inRow > 0 ? [] : middlePart(name, parting, opening > 0)),
    side('left', names[1]),
  ];
  return { parts, edges: [...sides.edges, neck.edge], neck };
}

/**
 * Stitches in the middle of a neck that are bound off in the first row of the side at the left edge: the yarn is joined
 * there once, and the row goes on to its end; common practice, no published source.
 */
const boundOffInRow = (middle: number, isApart: boolean): number => (middle > 1 && !isApart ? middle : 0);

/** The one stitch at the point of a V rests for the band, as all that lies in a middle that is held; below an opening it is bound off. */
function middlePart(name: string, { middle }: Neck, isOpening: boolean): readonly PartRecipe[] {
  if (middle === 0) return [];
  const from = { part: name, stitches: middle, edge: 'middle' } as const;
  return [{ name: 'neck', from, sections: [], end: isOpening ? 'bind off' : 'hold' }];
}
