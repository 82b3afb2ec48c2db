import type { MeasuredGauge } from '../../measured-gauge.ts';
import { plan } from '../plan.ts';
import type { PlannedPart } from '../planned.ts';
import type { PartRecipe, Recipe } from '../recipe.ts';
import { formToRecipe } from './read-piece.ts';
import type { StarterWords } from './starters.ts';
import {
  type GivenFigure,
  neckOf,
  type StraightCounts,
  type StraightFigure,
  type StraightShape,
  straightCounts,
  straightFigureNames,
  straightMm,
  straightPieces,
} from './straight.ts';

export interface WornStraight {
  readonly gauge: MeasuredGauge;
  /** of the main fabric, mm */
  readonly needle: number;
  /** what a length is rounded to where that leaves its count as it is, mm, the roundest first */
  readonly tidyMm: readonly number[];
}

/**
 * The shape that pieces are straight panels of, each figure as a length, so that it can be asked anew for another size;
 * undefined where they are none, or were changed to something else since: what the shape makes must be these pieces, row
 * by row.
 */
export function straightShapeOf(pieces: readonly Recipe[], worn: WornStraight): StraightShape | undefined {
  const [back, front, sleeve] = roles.map((role) => pieces.find((piece) => piece.role === role));
  if (!back || !front || !sleeve || pieces.length > roles.length) return undefined;
  const counts = countsOf(back, front, sleeve);
  if (counts === undefined) return undefined;
  const neck = front.parts.length === 1 ? 'boat' : 'V';
  // a boat neck has no depth: should she want a V, the usual one is asked
  const names = straightFigureNames.filter((name) => neck === 'V' || name !== 'neckDepth');
  const counted: StraightShape = { neck, given: givenBy(names, (name) => ({ count: counts[name] })) };
  if (!areSame([back, front, sleeve], counted, worn)) return undefined;
  return { neck, given: givenBy(names, (name) => asLength(counted, name, counts[name], worn)) };
}

const givenBy = (
  names: readonly StraightFigure[],
  of: (name: StraightFigure) => GivenFigure,
): StraightShape['given'] => Object.fromEntries(names.map((name) => [name, of(name)]));

/** In the order in which a shape's pieces are made. */
const roles = ['back', 'front', 'sleeve'] as const;

/** The figures that they would have; whether the rest of them is so too is asked of their rows. */
function countsOf(back: Recipe, front: Recipe, sleeve: Recipe): StraightCounts | undefined {
  const [backPart, frontPart, sidePart, cuffPart] = [
    back.parts[0],
    front.parts[0],
    front.parts[1],
    sleeve.parts[0],
  ];
  const [width, cuff] = [castOnOf(backPart), castOnOf(cuffPart)];
  if (!backPart || !frontPart || !cuffPart || width === undefined || cuff === undefined) return undefined;
  const shoulder = backPart.sections
    .flatMap(({ shaping }) => shaping)
    .flatMap((one) => (one.kind === 'bind off' ? one.groups.map(({ stitches }) => stitches) : []))[0];
  const widened = cuffPart.sections
    .flatMap(({ shaping }) => shaping)
    .reduce((sum, one) => sum + (one.kind === 'across' ? one.by : 0), 0);
  const c = {
    width,
    length: rowsOf(backPart),
    border: borderOf(backPart),
    neckWidth: width - 2 * (shoulder ?? 0),
    neckDepth: sidePart ? rowsOf(sidePart) : 0,
    cuff,
    sleeveTop: cuff + widened,
    sleeveLength: rowsOf(cuffPart),
  };
  return neckOf(c) > 0 ? c : undefined;
}

const castOnOf = (part: PartRecipe | undefined): number | undefined =>
  part && 'castOn' in part.from ? part.from.castOn : undefined;

const rowsOf = ({ sections }: PartRecipe): number => sections.reduce((sum, { rows }) => sum + rows, 0);

/** Rows of rib that it begins with. */
function borderOf({ sections }: PartRecipe): number {
  const [first] = sections;
  return first?.fabric === 'rib 1x1' || first?.fabric === 'rib 1x1 matched' ? first.rows : 0;
}

/** As a round length where that is as many stitches or rows, else as the count that it is. */
function asLength(
  counted: StraightShape,
  name: StraightFigure,
  count: number,
  { gauge, tidyMm }: WornStraight,
): GivenFigure {
  const exact = straightMm(counted, name, gauge);
  if (exact === undefined) return { count };
  const lengths = [...tidyMm.map((grain) => Math.round(exact / grain) * grain), exact];
  const mm = lengths.find((length) => {
    const typed = { ...counted, given: { ...counted.given, [name]: { mm: length } } };
    return straightCounts(typed, gauge)?.[name] === count;
  });
  return mm === undefined ? { count } : { mm };
}

/** Names apart, since they are in her language and hers to change. */
const words = new Proxy({}, { get: (_, name) => String(name) }) as StarterWords;

function areSame(pieces: readonly Recipe[], shape: StraightShape, { gauge, needle }: WornStraight): boolean {
  const counts = straightCounts(shape, gauge);
  if (counts === undefined) return false;
  const made = straightPieces(shape, counts, { gauge, needle, words });
  return made.every((form, i) => {
    const read = formToRecipe(form);
    const own = pieces[i];
    return (
      read.ok && own !== undefined && own.makes === read.value.makes && knitted(own) === knitted(read.value)
    );
  });
}

/** Every row of it, as it is worked; a section that was parted where it was planned anew is as it was. */
function knitted(piece: Recipe): string | undefined {
  const planned = plan(piece);
  return planned.ok ? JSON.stringify(planned.value.parts.map(partRows)) : undefined;
}

const partRows = ({ end, rows, sections }: PlannedPart) => [
  end,
  rows.map(({ side, needle, steps, section }) => [side, needle, steps, sections[section]?.fabric]),
];
