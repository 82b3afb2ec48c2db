import type { Edge, Group, PartRecipe, Recipe, Section, Shaping } from '../piece/recipe.ts';
import type { TurnWay } from '../piece/turn-way.ts';
import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { shoulderEndFacts, shoulderFacts } from './kinds/shoulders.ts';
import { withRoomForShaping } from './narrow-rows.ts';
import { openingOf } from './which-opening.ts';

/** Name of the sections in which drafts slope their shoulders. */
const SHOULDER = 'shoulder';

/**
 * Pairs of rows at the end of a shoulder in short rows that are worked without a turn: back from the last turn, then one
 * row over all stitches that closes every gap (Berroco Design Studio, 'Shaping Shoulders with Short Rows', 2016: the
 * last two rows are worked to the end, picking up the wraps, then all is bound off; forum.knittinghelp.com, 'Short-Row
 * Shoulders Question', gives the same for a front: turns, the way back, then a row over all stitches).
 */
export const CLOSING_PAIRS = 1;

/**
 * The same shoulders in short rows: where steps were bound off at the beginning of a row, the row that ends there
 * turns before those stitches instead; all of them are bound off together at the end, or rest to be joined stitch to
 * stitch.
 * @param way how each turn is worked and its gap closed; unsaid where it is left out
 */
export function withShortRows(recipe: Recipe, way?: TurnWay): Recipe {
  const parts = recipe.parts.map((part) => turned(part, outerEdges(part, recipe), way));
  return {
    ...recipe,
    parts: parts.map((part) => {
      const asleep = handedOn(part, recipe);
      return withRoomForShaping(withHandedOn(part, asleep), asleep);
    }),
  };
}

/** The same piece with its shoulders resting, to be bound off together with another's, or grafted. */
export function withHeldShoulders(recipe: Recipe): Recipe {
  const isShoulder = ({ from }: PartRecipe): boolean =>
    'part' in from ? from.edge !== 'middle' : !recipe.parts.some((p) => 'part' in p.from);
  return {
    ...recipe,
    parts: recipe.parts.map((part) =>
      part.end === 'bind off' && isShoulder(part) ? { ...part, end: 'hold' } : part,
    ),
  };
}

/** Whether the shoulders' stitches rest at their end: only short rows leave all of them on the needle, and an open shoulder is picked up along its bound-off edge. */
export const holdsShoulders = (design: Design): boolean => openingOf(design).shoulders === 0 && rests(design);

const rests = ({ armhole, shoulder, shoulderEnd }: Design): boolean =>
  !armholes[armhole].toNeck && shoulderFacts(shoulder).turns && shoulderEndFacts(shoulderEnd).rests;

/** The edges that lie at the arm: of a shoulder the one that it was parted at, of an open front the right one. */
function outerEdges({ from }: PartRecipe, recipe: Recipe): readonly Edge[] {
  if ('part' in from) return from.edge === 'middle' ? [] : [from.edge];
  return recipe.mirrored ? ['right'] : ['right', 'left'];
}

function turned(part: PartRecipe, edges: readonly Edge[], way: TurnWay | undefined): PartRecipe {
  const sections = part.sections.map((section): Section => {
    if (section.name !== SHOULDER) return section;
    return { ...section, shaping: section.shaping.map((s) => asTurns(s, edges, way)) };
  });
  return { ...part, sections };
}

/** Groups begin RS rows at the right edge; the row after ends there. At the left edge it is the row before. */
function asTurns(shaping: Shaping, edges: readonly Edge[], way: TurnWay | undefined): Shaping {
  if (shaping.kind !== 'bind off' || !edges.includes(shaping.edge)) return shaping;
  const by = shaping.edge === 'right' ? 1 : -1;
  return {
    kind: 'turn',
    edge: shaping.edge,
    groups: shaping.groups.map((g): Group => ({ ...g, row: g.row + by })),
    ...(way ? { way } : {}),
  };
}

/** Stitches of a body that were left unworked before a shoulder was parted from it. */
function handedOn({ from }: PartRecipe, recipe: Recipe): number {
  if (!('part' in from) || from.edge === 'middle') return 0;
  const parent = recipe.parts.find((p) => p.name === from.part);
  return parent ? boundOffAt(parent, from.edge) : 0;
}

/** A shoulder parted from the body takes along the stitches that the body now leaves unworked. */
function withHandedOn(part: PartRecipe, asleep: number): PartRecipe {
  const { from } = part;
  if (!('part' in from) || asleep === 0) return part;
  return { ...part, from: { ...from, stitches: from.stitches + asleep } };
}

const boundOffAt = (part: PartRecipe, edge: Edge): number =>
  part.sections
    .filter((section) => section.name === SHOULDER)
    .flatMap((section) => section.shaping)
    .reduce((sum, s) => (s.kind === 'bind off' && s.edge === edge ? sum + groupsSum(s.groups) : sum), 0);

const groupsSum = (groups: readonly Group[]): number => groups.reduce((sum, g) => sum + g.stitches, 0);
