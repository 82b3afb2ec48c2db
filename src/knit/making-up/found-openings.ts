import type { Recipe } from '../piece/recipe.ts';
import type { Step } from '../row/step.ts';
import { caseOf } from '../row/walk-step.ts';
import type { StitchName } from '../stitch.ts';
import type { EdgeName, Laps, SewnBand } from './band-joints.ts';
import type { Worn } from './piece-edges.ts';

/** How the neck of a garment opens whose pieces alone tell of it: by what its bands are picked up along. */
export interface FoundOpenings {
  readonly laps?: Laps;
  readonly placket?: Worn;
  /** the back neck is picked up in two halves, from an opening to a shoulder each */
  readonly partsBack: boolean;
}

/** @param isOpen the front is opened from its hem: its edges are no placket */
export function openingsOf(
  bands: readonly SewnBand[],
  recipes: readonly Recipe[],
  isOpen: boolean,
): FoundOpenings {
  const along = new Set(bands.flatMap((band) => band.along.map(({ edge }) => edge)));
  const has = (edge: EdgeName) => along.has(edge);
  const lapped = has('right front shoulder') ? 'both' : 'left';
  const laps = has('left front shoulder') ? lapped : undefined;
  const isPlacket = !isOpen && has('left front edge') && has('right front edge');
  return {
    ...(laps === undefined ? {} : { laps }),
    ...(isPlacket ? { placket: onTop(bands, recipes) } : {}),
    partsBack: has('left back neck') && has('right back neck') && !has('middle of the back neck'),
  };
}

/** The band with the holes lies on the other. */
function onTop(bands: readonly SewnBand[], recipes: readonly Recipe[]): Worn {
  const left = bands.find((band) => band.along.some(({ edge }) => edge === 'left front edge'));
  const recipe = recipes.find(({ name }) => name === left?.piece);
  return recipe && hasHoles(recipe) ? 'left' : 'right';
}

const hasHoles = ({ parts }: Recipe): boolean =>
  parts.some(({ sections }) =>
    sections.some(({ words = [] }) => words.some((row) => !isOneOrder(row) && row.some(makesHole))),
  );

/** 'Bind off all sts' opens nothing; holes that fill their row evenly are one order too, but to repeat. */
const isOneOrder = ([step, ...more]: readonly Step[]): boolean =>
  more.length === 0 &&
  step !== undefined &&
  caseOf(step, {
    works: () => true,
    worksUntil: () => true,
    repeats: () => false,
    repeatsUntil: () => false,
  });

const opens = (work: StitchName): boolean => work === 'bo' || work === 'yo';

const makesHole = (step: Step): boolean =>
  caseOf(step, {
    works: opens,
    worksUntil: opens,
    repeats: (inner) => inner.some(makesHole),
    repeatsUntil: (inner) => inner.some(makesHole),
  });
