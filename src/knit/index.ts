/**
 * The public face of the craft: everything here is pure and answers with data. Refusals are `Result`s with
 * faults (code, place, figures and an English sentence), never exceptions.
 */
export { type FabricName, fabricNames, fabrics, fits } from './fabric.ts';
export type { Fault, Result, Where } from './fault.ts';
export { type BodyTable, bodyOfSize, bodyTables, type SizedBody } from './garment/bodies.ts';
export type { Body, Design, Ease } from './garment/design.ts';
export { type Draft, draft } from './garment/draft.ts';
export { easeFor, type Fit, fitOf } from './garment/ease.ts';
export { gaugeOfSwatch } from './garment/gauges.ts';
export { type GradedSize, grade, resized } from './garment/grade.ts';
export type { Rounding } from './garment/roundings.ts';
export { type Choices, startingDesign } from './garment/start.ts';
export type { Warning } from './garment/warnings.ts';
export { type Gauge, heightOf, MM_PER_INCH, widthOf } from './gauge.ts';
export { type MakingUpStep, makingUp } from './making-up/making-up.ts';
export type { ReadStitchPattern } from './pattern/check-pattern.ts';
export {
  type ReadLine,
  type ReadOptions,
  type ReadPattern,
  type ReadPiece,
  type ReadRow,
  readPattern,
} from './pattern/read-pattern.ts';
export type { Said } from './piece/count/advice.ts';
export { countAt } from './piece/count/count-at.ts';
export { type Landmark, landmarksOf } from './piece/count/landmarks.ts';
export {
  type Look,
  type LookCode,
  type LookOption,
  type Seen,
  sameSeen,
  seenAt,
} from './piece/count/look.ts';
export type { Observation, ObservationKind } from './piece/count/observation.ts';
export type { SlipCause } from './piece/count/slip.ts';
export { type Check, type CountKnown, type Explanation, explainCount } from './piece/explain-count.ts';
export { type Distinction, type Found, findPlace } from './piece/find-place.ts';
export type { Garment, Swatch, Yarn } from './piece/garment.ts';
export { plan } from './piece/plan.ts';
export {
  type Plan,
  type PlannedPart,
  type PlannedRow,
  type PlannedSection,
  partsOfMake,
  type ShapingMark,
} from './piece/planned.ts';
export type { Edge, Group, PartRecipe, PartStart, PickUp, Recipe, Section, Shaping } from './piece/recipe.ts';
export { regauge } from './piece/regauge/regauge.ts';
export { asReallyKnitted, recipeOfMake } from './piece/rework/make-recipe.ts';
export { type Mismatch, mismatches, type PlannedPiece } from './piece/rework/matches.ts';
export type { Rework, ReworkedPart } from './piece/rework/replan.ts';
export { type ReworkWish, rework } from './piece/rework.ts';
export { type RipBack, type RipTarget, ripBack, type Stop } from './piece/rip-back.ts';
export { type OnNeedle, type TogetherOrder, type TogetherStep, togetherOrder } from './piece/together.ts';
export { expandRow } from './row/expand.ts';
export { normalForm } from './row/normal-form.ts';
export { parseRow } from './row/parse.ts';
export { printRow } from './row/print.ts';
export { englishRowWords, type RowWords } from './row/row-words.ts';
export type { Side, Step } from './row/step.ts';
export { type Worked, workRow } from './row/work.ts';
export { type Spread, spread } from './shape/spread.ts';
export { type Taper, type TaperWish, taper } from './shape/taper.ts';
export { isStitchName, type StitchKind, type StitchName, stitches, stitchNames } from './stitch.ts';
export { writePattern } from './written/write-pattern.ts';
export { type Sized, writeSizes } from './written/write-sizes.ts';
export { type LastBall, lastBall } from './yarn/last-ball.ts';
export { type Taken, type YarnNeed, yarnFor } from './yarn/need.ts';
