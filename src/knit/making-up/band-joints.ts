import type { Edge, PieceRole } from '../piece/recipe.ts';
import type { FreeEdge, Joint, Line, Stretch } from './joint.ts';

/** The edges that bands are picked up along. */
export type EdgeName =
  | `${'left' | 'right'} ${'front neck' | 'back neck' | 'front shoulder' | 'back shoulder' | 'sleeve top' | 'front edge' | 'front armhole' | 'back armhole'}`
  | 'middle of the front neck'
  | 'middle of the back neck'
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

/** When a band is knitted: at the neck first, then along an open shoulder, and where seams are sewn by then. */
type BandOrder = 'neck' | 'shoulder' | 'rest';

/** The pick-up of the bands that are knitted then. */
export function bandJoints(bands: readonly SewnBand[], lines: EdgeLines, which: BandOrder): Joint[] {
  const collar = bands.find(({ role }) => role === 'neckband');
  const lap = lapBand(bands);
  const orderOf = (band: SewnBand): BandOrder =>
    band.role === 'neckband' ? 'neck' : band === lap ? 'shoulder' : 'rest';
  return bands
    .filter((band) => orderOf(band) === which)
    .flatMap((band) =>
      band.role === 'armhole band'
        ? [armhole(band, lines, 1), armhole(band, lines, 2)]
        : [pickedUp(band, lines, collar)],
    );
}

function pickedUp(band: SewnBand, lines: EdgeLines, collar: SewnBand | undefined): Joint {
  const along = band.along.map(({ edge, ...rest }) => {
    const line = edge === undefined ? [] : lines[edge];
    return { line: collar && collar !== band ? withCollar(edge, line, collar) : line, ...rest };
  });
  return { kind: 'pick up', piece: band.piece, make: 1, along };
}

/** A front band, and one along an open shoulder, goes on along the side of the neckband, which is knitted before it. */
function withCollar(edge: EdgeName | undefined, line: Line, collar: SewnBand): Line {
  if (edge === 'right front edge' || edge === 'left front shoulder')
    return [...line, sideOf(collar, 1, 'right')];
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

/** Shoulders that are not sewn but lie over each other: a band of the front on the back at the left one, or those of both at both. */
export type Laps = 'left' | 'both';

/** The band that lies on the back along an open left shoulder. */
export const lapBand = (bands: readonly SewnBand[]): SewnBand | undefined =>
  bands.find(
    ({ role, along }) => role !== 'neckband' && along.some(({ edge }) => edge === 'left front shoulder'),
  );

interface FreeEnds {
  readonly isOpen: boolean;
  /** the neck opens behind or along a raglan */
  readonly hasOpening: boolean;
  readonly laps: Laps | undefined;
  /** the front opens a little way, between two bands */
  readonly hasPlacket: boolean;
}

/** Where bands are bound off, and the ends of those that do not go round. */
export function freeBandEdges(bands: readonly SewnBand[], free: FreeEnds): Joint[] {
  const lap = lapBand(bands);
  return bands.flatMap((band): Joint[] => {
    const { piece, part } = band;
    const isPlacket = free.hasPlacket && band.role === 'front band';
    const as = band === lap || isPlacket ? 'opening' : freeAs(band);
    const tops = Array.from({ length: band.makes }, (_, i): Joint => {
      return { kind: 'left free', line: [{ piece, make: i + 1, part, edge: 'top' }], as };
    });
    const ends = freeEnds(band, bands, free).map((edge): Joint => {
      const isNeck = free.hasOpening || free.laps !== undefined || free.hasPlacket;
      return { kind: 'left free', line: [sideOf(band, 1, edge)], as: isNeck ? 'opening' : 'front' };
    });
    return [...tops, ...ends];
  });
}

const freeAs = ({ role }: SewnBand): FreeEdge =>
  role === 'neckband' ? 'neck' : role === 'armhole band' ? 'armhole' : 'front';

/** Ends that no seam takes and no other band. */
function freeEnds(band: SewnBand, bands: readonly SewnBand[], free: FreeEnds): readonly Edge[] {
  const { isOpen, hasOpening, laps, hasPlacket } = free;
  if (hasPlacket) return band.role === 'front band' ? [isAlong(band, 'right') ? 'left' : 'right'] : [];
  if (laps === 'both') return [];
  if (laps === 'left') return band.role === 'neckband' || band === lapBand(bands) ? ['left'] : [];
  const hasFrontBands = bands.some(({ role }) => role === 'front band');
  const isFree =
    band.role === 'front band' || (band.role === 'neckband' && (hasOpening || (isOpen && !hasFrontBands)));
  return isFree ? ['right', 'left'] : [];
}

const isAlong = ({ along }: SewnBand, worn: 'left' | 'right'): boolean =>
  along.some(({ edge }) => edge === `${worn} front edge`);

/**
 * Of a placket: the lower end of the band on top is sewn to what is bound off between its edges, that of the other
 * behind it. A right band begins with its lower end, a left one ends with it.
 */
export function placketJoints(bands: readonly SewnBand[], onTop: 'left' | 'right', middle: Line): Joint[] {
  const below = onTop === 'left' ? 'right' : 'left';
  const end = (worn: 'left' | 'right'): Line => {
    const band = bands.find((one) => one.role === 'front band' && isAlong(one, worn));
    return band ? [sideOf(band, 1, worn)] : [];
  };
  const [top, other] = [end(onTop), end(below)];
  if (top.length === 0 || other.length === 0) return [];
  const sewn = (a: Line, b: Line): Joint => ({ kind: 'seam', of: 'lap', a, b, how: 'sewn' });
  if (middle.length === 0) return [sewn(top, other)];
  return [sewn(top, middle), { kind: 'left free', line: other, as: 'opening' }];
}

/** Of an open left shoulder: its band on the back; of an envelope neck: the ends of both bands. Caught at the armholes. */
export function lapJoints(bands: readonly SewnBand[], laps: Laps, leftBackShoulder: Line): Joint[] {
  const lap = (a: Line, b: Line): Joint => ({ kind: 'seam', of: 'lap', a, b, how: 'sewn' });
  if (laps === 'left') {
    const band = lapBand(bands);
    return band ? [lap([sideOf(band, 1, 'right')], leftBackShoulder)] : [];
  }
  const [front, back] = bands.filter(({ role }) => role === 'neckband');
  if (!front || !back) return [];
  return [
    lap([sideOf(back, 1, 'left')], [sideOf(front, 1, 'right')]),
    lap([sideOf(back, 1, 'right')], [sideOf(front, 1, 'left')]),
  ];
}
