import type { PlannedPart, PlannedRow } from '../../../src/knit/piece/planned.ts';
import type { Edge } from '../../../src/knit/piece/recipe.ts';
import type { StandingGarment, StandingMake, StandingPiece } from '../../../src/knit/piece/standing.ts';

/** Two edges that a finisher holds against each other, told by the draft's own names and counted row by row. */
export interface Meeting {
  readonly what: string;
  readonly pieces: readonly [string, string];
  /** of the first more than of the second, rows or stitches */
  readonly off: number;
  /** by so much it may change before it is told */
  readonly within: number;
}

type Pieces = Pick<StandingGarment, 'pieces'>;

/** The names under which a draft shapes an armhole or a raglan. */
const FROM_UNDERARM = ['armhole', 'raglan'];

/** Rows along the side of a neck by which it may grow before its band is told: three stitches of rows half as high as stitches are wide. */
const NECK_ROWS = 8;

/** What meets in a drafted garment, reckoned apart from its joints: bodies and raglans row by row, pairs, shoulders stitch by stitch. */
export function meetings({ pieces }: Pieces): readonly Meeting[] {
  const called = (name: string) => pieces.find(({ recipe }) => recipe.name === name);
  const [back, front, sleeve] = ['Back', 'Front', 'Sleeve'].map(called);
  const raglan = sleeve ? rowsCalled(sleeve.makes[0], 'raglan') : 0;
  const found: Meeting[] = [];
  const meet = (what: string, one: string, other: string, off: number, within = 0) =>
    found.push({ what, pieces: [one, other], off, within });
  for (const worn of back && front ? (['left', 'right'] as const) : []) {
    const [b, f] = [panelSide(back, worn, 'Back'), panelSide(front, worn, 'Front')];
    meet(`${worn} side`, 'Back', 'Front', b.below - f.below);
    if (raglan === 0) meet(`${worn} above the underarm`, 'Back', 'Front', b.above - f.above);
    else {
      meet(`${worn} raglan behind`, 'Back', 'Sleeve', b.above - raglan);
      meet(`${worn} raglan before`, 'Front', 'Sleeve', f.above - raglan);
    }
    if (raglan === 0 && b.shoulder > 0 && f.shoulder > 0)
      meet(`${worn} shoulder`, 'Back', 'Front', b.shoulder - f.shoulder);
    const band = pieces.find(({ recipe }) => picksUp(recipe.parts[0], `${worn} front neck`));
    if (band && f.neck > 0) meet(`${worn} neck`, 'Front', band.recipe.name, f.neck, NECK_ROWS);
  }
  const [buttons, holes] = ['Button band', 'Buttonhole band'].map((name) => rowsOf(called(name)?.makes[0]));
  if (buttons && holes) meet('bands of the front', 'Button band', 'Buttonhole band', buttons - holes);
  if (sleeve)
    meet('sleeves', 'Sleeve', 'Sleeve', rowsOf(sleeve.makes[0]) - rowsOf(sleeve.makes[1] ?? sleeve.makes[0]));
  return found;
}

/** What is further apart than it was. @param but without what another number mends, as a band's edge */
export const noMore = (before: Pieces, after: Pieces): readonly Meeting[] => {
  const was = new Map(meetings(before).map(({ what, off }) => [what, off]));
  return meetings(after).filter(({ what, off, within }) => {
    const then = was.get(what);
    return then !== undefined && Math.abs(off - then) > within;
  });
};

const picksUp = (part: StandingPiece['recipe']['parts'][number] | undefined, edge: string): boolean =>
  part !== undefined && 'pickUp' in part.from && part.from.pickUp.some(({ along }) => along === edge);

/** The outer edge of a panel on a side of the wearer: of a front, the wearer's left lies at its right edge. */
function panelSide(piece: StandingPiece | undefined, worn: 'left' | 'right', name: 'Back' | 'Front') {
  const isHalf = piece?.makes.length === 2;
  const make = piece?.makes[isHalf && worn === 'right' ? 1 : 0];
  const edge: Edge = name === 'Back' ? worn : worn === 'left' ? 'right' : 'left';
  const parts = make ? chain(make, edge, isHalf) : [];
  const sections = parts.flatMap((part) =>
    knitted(part)
      .filter((row) => !turnsBefore(row, edge))
      .map((row) => part.sections[row.section]?.name ?? ''),
  );
  const at = sections.findIndex((section) => FROM_UNDERARM.includes(section));
  const leaf = parts.length > 1 ? parts.at(-1) : undefined;
  return {
    below: at < 0 ? sections.length : at,
    above: at < 0 ? 0 : sections.length - at,
    shoulder: leaf ? shoulderOf(leaf, edge) : 0,
    neck: leaf ? knitted(leaf).length : 0,
  };
}

const chain = ({ parts }: StandingMake, edge: Edge, isHalf: boolean): readonly PlannedPart[] =>
  isHalf
    ? parts.slice(0, 1)
    : parts.filter(({ from }, i) => i === 0 || ('part' in from && from.edge === edge));

/** Without the row that binds everything off. */
const knitted = ({ rows }: PlannedPart): readonly PlannedRow[] =>
  rows.filter(({ before, after }) => after > 0 || before === 0);

/** A short row that turns before the edge gives it no row, nor does the one that comes back. */
function turnsBefore({ side, steps }: PlannedRow, edge: Edge): boolean {
  const outermost = (side === 'RS') === (edge === 'right') ? steps[0] : steps.at(-1);
  return outermost !== undefined && 'work' in outermost && outermost.work === 'unworked';
}

/** Stitches of a shoulder that stands by itself: its groups, and what is bound off (or held) at last. */
function shoulderOf(leaf: PlannedPart, edge: Edge): number {
  const groups = leaf.rows
    .flatMap(({ shaping, section }) => (leaf.sections[section]?.name === 'shoulder' ? shaping : []))
    .reduce((sum, mark) => (mark.kind === 'bind off' && mark.edge === edge ? sum - mark.by : sum), 0);
  return groups + (knitted(leaf).at(-1)?.after ?? leaf.start);
}

const rowsOf = (make: StandingMake | undefined): number => {
  const [part] = make?.parts ?? [];
  return part ? knitted(part).length : 0;
};

const rowsCalled = (make: StandingMake | undefined, name: string): number =>
  make?.parts[0]?.rows.filter(({ section }) => make.parts[0]?.sections[section]?.name === name).length ?? 0;
