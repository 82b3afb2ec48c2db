import type { PieceRole } from '../piece/recipe.ts';
import type { Joint, Line, Stretch } from './joint.ts';

/** The edges that bands are picked up along. */
export type EdgeName =
  | `${'left' | 'right'} ${'front neck' | 'back neck' | 'sleeve top' | 'front edge' | 'front armhole' | 'back armhole'}`
  | 'middle of the front neck'
  | 'front neck'
  | 'back neck';

/** A band with what it is picked up along; no edge where it takes a single stitch between two others. */
export interface SewnBand {
  readonly piece: string;
  readonly part: string;
  readonly role: PieceRole;
  readonly makes: number;
  readonly along: readonly {
    readonly edge: EdgeName | undefined;
    readonly stitches: number;
    /** see `Along` */
    readonly percent?: number;
  }[];
}

type EdgeLines = Readonly<Record<EdgeName, Line>>;

const sideOf = ({ piece, part }: SewnBand, make: number, edge: 'right' | 'left'): Stretch => ({
  piece,
  make,
  part,
  edge,
});

/** The pick-up of the neckband, or of all other bands. */
export function bandJoints(bands: readonly SewnBand[], lines: EdgeLines, which: 'neck' | 'rest'): Joint[] {
  const collar = bands.find(({ role }) => role === 'neckband');
  return bands
    .filter(({ role }) => (role === 'neckband') === (which === 'neck'))
    .flatMap((band) =>
      band.role === 'armhole band'
        ? [armhole(band, lines, 1), armhole(band, lines, 2)]
        : [pickedUp(band, lines, collar)],
    );
}

function pickedUp(band: SewnBand, lines: EdgeLines, collar: SewnBand | undefined): Joint {
  const along = band.along.map(({ edge, stitches }) => {
    const line = edge === undefined ? [] : lines[edge];
    return { line: band.role === 'front band' ? withCollar(edge, line, collar) : line, stitches };
  });
  return { kind: 'pick up', piece: band.piece, make: 1, along };
}

/** A front band goes on along the side of the neckband, which is knitted before it. */
function withCollar(edge: EdgeName | undefined, line: Line, collar: SewnBand | undefined): Line {
  if (!collar) return line;
  if (edge === 'right front edge') return [...line, sideOf(collar, 1, 'right')];
  if (edge === 'left front edge') return [{ ...sideOf(collar, 1, 'left'), reversed: true }, ...line];
  return line;
}

/** Bands are described for the left armhole, which begins with its front; with the right side facing, the right one begins with its back. */
function armhole({ piece, along }: SewnBand, lines: EdgeLines, make: number): Joint {
  const edges = along.map(({ edge, ...rest }) => {
    const own = make === 1 ? edge : (edge?.replace('left', 'right') as EdgeName | undefined);
    return { line: own === undefined ? [] : lines[own], ...rest };
  });
  return { kind: 'pick up', piece, make, along: make === 1 ? edges : edges.reverse() };
}

/** The ends of a band that goes round are sewn together. */
export function closingsOf(
  bands: readonly SewnBand[],
  role: 'neckband' | 'armhole band',
  isRound: boolean,
): Joint[] {
  if (!isRound) return [];
  return bands
    .filter((band) => band.role === role)
    .flatMap((band) =>
      Array.from({ length: band.makes }, (_, i): Joint => {
        const [a, b] = [[sideOf(band, i + 1, 'right')], [sideOf(band, i + 1, 'left')]];
        return { kind: 'seam', of: 'band', a, b, how: 'mattress' };
      }),
    );
}

/** Where bands are bound off, and the ends of those that do not go round. */
export function freeBandEdges(bands: readonly SewnBand[], isOpen: boolean, hasOpening: boolean): Joint[] {
  const hasFrontBands = bands.some(({ role }) => role === 'front band');
  return bands.flatMap((band): Joint[] => {
    const as = band.role === 'neckband' ? 'neck' : band.role === 'armhole band' ? 'armhole' : 'front';
    const { piece, part } = band;
    const tops = Array.from({ length: band.makes }, (_, i): Joint => {
      return { kind: 'left free', line: [{ piece, make: i + 1, part, edge: 'top' }], as };
    });
    const ends = (['right', 'left'] as const).map((edge): Joint => {
      return { kind: 'left free', line: [sideOf(band, 1, edge)], as: hasOpening ? 'opening' : 'front' };
    });
    const isFree =
      band.role === 'front band' || (band.role === 'neckband' && (hasOpening || (isOpen && !hasFrontBands)));
    return isFree ? [...tops, ...ends] : tops;
  });
}
