import type { EdgeName, SewnBand } from '../../making-up/band-joints.ts';
import type { Joint } from '../../making-up/joint.ts';
import type { Parted, Sewn } from '../../making-up/sewn.ts';
import { stated } from '../../making-up/statement.ts';
import type { Recipe } from '../../piece/recipe.ts';
import type { Design } from '../design.ts';
import { armholes } from '../kinds/armholes.ts';
import { garmentKinds } from '../kinds/garments.ts';
import { shoulderEndFacts } from '../kinds/shoulders.ts';
import { sleeveTops } from '../kinds/sleeve-tops.ts';
import { holdsShoulders } from '../short-rows.ts';
import { openingOf } from '../which-opening.ts';
import { PanelLines } from './panel-lines.ts';
import { SleeveLines } from './sleeve-lines.ts';

/** Stitches of necks that are bound off with the shoulders: of the back, of the front (half of it where it is open); 0 where they are shaped. */
export interface FlatNecks {
  readonly back: number;
  readonly front: number;
  /** rows along one side of an opening of the back, of the front, or of a raglan; 0 where there is none */
  readonly openingRows: number;
  /** how much longer a sleeve's straight top is than its armhole, in hundredths: its own seam takes the rest */
  readonly topEase: number;
}

/** The making up of a drafted garment, stated in its order. Each edge of each of its pieces is used or left free. */
export function jointsOf(design: Design, recipes: readonly Recipe[], flat: FlatNecks): readonly Joint[] {
  const [back, front] = recipes as readonly [Recipe, Recipe];
  const { open: isOpen } = garmentKinds[design.kind];
  const sleeve = recipes.find(({ role }) => role === 'sleeve');
  const partsFront = openingOf(design).partsFront && flat.openingRows > 0;
  const half = (make: number) => new PanelLines(front, make, isOpen, flat.front, partsFront);
  const own = (recipe: Recipe, make: number) =>
    new SleeveLines(recipe, make, design.sleeve.direction === 'top down');
  const armhole = armholes[design.armhole];
  return stated({
    back: new PanelLines(back, 1, false, flat.back),
    // the first of two fronts is the left one as worn
    fronts: { left: half(1), right: isOpen ? half(2) : half(1) },
    sleeves: sleeve && { left: own(sleeve, 1), right: own(sleeve, 2) },
    bands: recipes.flatMap((recipe) => bandOf(recipe, design)),
    isRaglan: armhole.toNeck,
    isIndented: armhole.isIndented,
    isOpen,
    isFlatFront: !isOpen && flat.front > 0,
    ...openings(design, back, sleeve, flat),
    shoulders: holdsShoulders(design) ? shoulderEndFacts(design.shoulderEnd).seam : 'mattress',
    capEase: sleeveTops[armhole.sleeveTop].takesEase ? design.sleeve.capEase : flat.topEase,
  });
}

/** How the neck opens, by its edges. */
function openings(
  design: Design,
  back: Recipe,
  sleeve: Recipe | undefined,
  flat: FlatNecks,
): Partial<Pick<Sewn, 'opening' | 'laps' | 'placket' | 'raglanOpening'>> {
  const { partsBack, partsFront, opensRaglan, shoulders } = openingOf(design);
  if (partsFront && flat.openingRows > 0)
    return { placket: design.frontBand.holesIn === 'left front' ? 'left' : 'right' };
  if (partsBack && flat.openingRows > 0)
    return { opening: new PanelLines(back, 1, false, flat.back).opened() };
  if (opensRaglan && sleeve && flat.openingRows > 0) {
    const isTopDown = design.sleeve.direction === 'top down';
    return {
      raglanOpening: {
        back: rowsAtTop(back, flat.openingRows, false),
        sleeve: rowsAtTop(sleeve, flat.openingRows, isTopDown),
      },
    };
  }
  return shoulders === 0 ? {} : { laps: shoulders === 1 ? 'left' : 'both' };
}

/** Rows of a piece's one part that are sewn, and the topmost ones that are not. */
function rowsAtTop({ parts }: Recipe, open: number, isTopDown: boolean): Parted {
  const all = parts[0]?.sections.reduce((sum, { rows }) => sum + rows, 0) ?? 0;
  return isTopDown
    ? { sewn: { first: open + 1, last: all }, open: { first: 1, last: open } }
    : { sewn: { first: 1, last: all - open }, open: { first: all - open + 1, last: all } };
}

/** The draft's own words for the edges that it picks up along. */
const EDGES: Readonly<Record<string, EdgeName>> = {
  'left front neck': 'left front neck',
  'right front neck': 'right front neck',
  'point of the V': 'middle of the front neck',
  'middle of the front neck': 'middle of the front neck',
  'front neck': 'front neck',
  'back neck': 'back neck',
  'left back neck': 'left back neck',
  'right back neck': 'right back neck',
  'middle of the back neck': 'middle of the back neck',
  'left front shoulder': 'left front shoulder',
  'right front shoulder': 'right front shoulder',
  'left back shoulder': 'left back shoulder',
  'right back shoulder': 'right back shoulder',
  'left sleeve top': 'left sleeve top',
  'right sleeve top': 'right sleeve top',
  'left front edge': 'left front edge',
  'right front edge': 'right front edge',
  'front armhole': 'left front armhole',
  'back armhole': 'left back armhole',
};

function bandOf({ name, role = 'other', makes, parts }: Recipe, { armholeBand }: Design): SewnBand[] {
  const [part] = parts;
  if (!part || !('pickUp' in part.from)) return [];
  const { percent } = role === 'armhole band' ? armholeBand : {};
  const share = percent === undefined ? {} : { percent };
  const along = part.from.pickUp.map(({ along: words, stitches }) => ({
    edge: EDGES[words],
    stitches,
    ...share,
  }));
  return [{ piece: name, part: part.name, role, makes, along }];
}
