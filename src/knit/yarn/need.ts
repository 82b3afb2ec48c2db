import { fault, ok, type Result, refuse } from '../fault.ts';
import { asPlanned } from '../piece/as-planned.ts';
import type { Garment } from '../piece/garment.ts';
import { gaugeIn } from '../piece/planned.ts';
import type { StandingGarment, StandingMake } from '../piece/standing.ts';
import { rowLoops, setUpLoops } from './loops.ts';
import { heldMetresPerGram, type PerStitch, type YarnBasis, yarnPerStitch } from './per-stitch.ts';
import { type BeyondTheRows, beyondTheRows } from './small-garments.ts';

/** What a finished make really took, from the scales, g. */
export interface Taken {
  readonly piece: string;
  readonly make: number;
  readonly grams: number;
}

export interface SectionYarn {
  readonly name: string;
  readonly loops: number;
  readonly metres: number;
  /** share kept in reserve for what its basis cannot know */
  readonly margin: number;
}

export interface PieceYarn {
  readonly piece: string;
  readonly make: number;
  readonly sections: readonly SectionYarn[];
  readonly metres: number;
  readonly grams?: number;
}

export interface YarnNeed {
  readonly makes: readonly PieceYarn[];
  /** whole garment, m of yarn as held (two strands together count once); the sections' sum */
  readonly metres: number;
  readonly grams?: number;
  readonly basis: YarnBasis;
  /** share added to what is to be bought: each section's own, by its metres, the making up, and what is beyond the rows */
  readonly margin: number;
  readonly metresToBuy: number;
  /** of the first yarn's balls, margin included; counted whole */
  readonly balls?: number;
  /** balls she has fewer than needed: buy while the same dye lot is there */
  readonly short?: number;
  /** what finished makes took as a share of their estimate; 1 while nothing is weighed */
  readonly correction: number;
}

/**
 * Yarn for a garment as its recipes have it; see `yarnOf`.
 * @returns the planner's faults when a piece cannot be knitted
 * @instrument of tests: screens have the plans in force
 */
export function yarnFor(garment: Garment, taken: readonly Taken[] = []): Result<YarnNeed> {
  const planned = asPlanned(garment);
  return planned.ok ? yarnOf(planned.value, taken) : planned;
}

/**
 * Yarn for the whole garment as it stands, by make and section, from a weighed swatch or the loop-length relation.
 * @param taken weights of finished makes; the rest is corrected by what they took
 */
export function yarnOf(garment: StandingGarment, taken: readonly Taken[] = []): Result<YarnNeed> {
  const bases: PerStitch[] = [];
  const raw = garment.pieces.flatMap(({ recipe, makes }) =>
    makes.map((make) => makeYarn(recipe.name, make, garment, bases)),
  );
  const bad = taken.find((t) => !(t.grams >= 0 && t.grams < 100_000));
  if (bad) return refuse(fault('bad weight', { pieceName: bad.piece, grams: bad.grams }));
  // a weight of nothing was not taken
  const weighed = taken.filter((t) => t.grams > 0);
  return ok(summed(raw, bases, garment, weighed));
}

function makeYarn(
  piece: string,
  { make, parts }: StandingMake,
  { swatches, yarns }: StandingGarment,
  bases: PerStitch[],
): PieceYarn {
  const sections = parts.flatMap((part) =>
    part.sections.map((section, index): SectionYarn => {
      const each = yarnPerStitch(section.fabric, gaugeIn(part, index), swatches, yarns?.[0]);
      bases.push(each);
      let loops = index === 0 ? setUpLoops(part) : 0;
      for (const row of part.rows) if (row.section === index) loops += rowLoops(row);
      return {
        name: `${part.name}: ${section.name}`,
        loops,
        metres: (loops * each.mm) / 1000,
        margin: each.margin,
      };
    }),
  );
  return { piece, make, sections, metres: sumOf(sections) };
}

const sumOf = (list: readonly { readonly metres: number }[]): number =>
  list.reduce((sum, s) => sum + s.metres, 0);

function summed(
  raw: readonly PieceYarn[],
  bases: readonly PerStitch[],
  garment: StandingGarment,
  taken: readonly Taken[],
): YarnNeed {
  const yarn = garment.yarns?.[0];
  const perGram = yarn && heldMetresPerGram(yarn);
  const correction = perGram === undefined ? 1 : correctionOf(raw, taken, perGram);
  const makes = raw.map((m) => corrected(m, correction, taken, perGram));
  const metres = sumOf(makes);
  const reserve = makes.flatMap((m) => m.sections).reduce((sum, s) => sum + s.metres * s.margin, 0);
  const basis = worstBasis(bases);
  const beyond = basis === 'loop length' && taken.length === 0 ? beyondTheRows(garment) : NOTHING;
  const margin = metres > 0 ? (reserve + beyond.swatch) / metres + beyond.share + MAKING_UP : 0;
  const metresToBuy = metres * (1 + margin);
  const balls = yarn?.metres
    ? Math.max(0, Math.ceil((metresToBuy * (yarn.strands ?? 1)) / yarn.metres - 1e-9))
    : undefined;
  const short =
    balls !== undefined && yarn?.balls !== undefined ? Math.max(0, balls - yarn.balls) : undefined;
  return {
    makes,
    metres,
    ...(perGram === undefined ? {} : { grams: metres / perGram }),
    basis,
    margin,
    metresToBuy,
    ...(balls === undefined ? {} : { balls }),
    ...(short === undefined ? {} : { short }),
    correction,
  };
}

/**
 * Share of the yarn that no row uses: seams, ends and joined balls (0.5 to 1 m a seam, 15 cm for each end), the second
 * strand of a cast-on; common practice, no published source.
 */
const MAKING_UP = 0.05;

const NOTHING: BeyondTheRows = { swatch: 0, share: 0 };

const isTaken = (m: PieceYarn, t: Taken): boolean => t.piece === m.piece && t.make === m.make;

/** Finished makes' weight over their estimate. */
function correctionOf(raw: readonly PieceYarn[], taken: readonly Taken[], perGram: number): number {
  let really = 0;
  let estimated = 0;
  for (const make of raw) {
    const found = taken.find((t) => isTaken(make, t));
    if (!found) continue;
    really += found.grams;
    estimated += make.metres / perGram;
  }
  return estimated > 0 ? really / estimated : 1;
}

/** A finished make counts as weighed, the others by the estimate as corrected. */
function corrected(
  make: PieceYarn,
  by: number,
  taken: readonly Taken[],
  perGram: number | undefined,
): PieceYarn {
  const weighed = perGram === undefined ? undefined : taken.find((t) => isTaken(make, t));
  const share =
    weighed && perGram !== undefined && make.metres > 0 ? (weighed.grams * perGram) / make.metres : by;
  const sections = make.sections.map((s) => ({ ...s, metres: s.metres * share }));
  const metres = sumOf(sections);
  return { ...make, sections, metres, ...(perGram === undefined ? {} : { grams: metres / perGram }) };
}

const surest: readonly YarnBasis[] = ['weighed swatch', 'weighed swatch of another fabric', 'loop length'];

const worstBasis = (bases: readonly PerStitch[]): YarnBasis =>
  surest[Math.max(0, ...bases.map((b) => surest.indexOf(b.basis)))] ?? 'loop length';
