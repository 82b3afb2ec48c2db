import type { Joint, Line, Stretch } from '../../making-up/joint.ts';
import type { PickUp, Recipe } from '../../piece/recipe.ts';

/** The edges that bands are picked up along, by their names. */
export type BandLines = Readonly<Record<string, Line>>;

const pickUpOf = ({ parts }: Recipe): readonly PickUp[] => {
  const from = parts[0]?.from;
  return from && 'pickUp' in from ? from.pickUp : [];
};

const sideOf = (band: Recipe, make: number, edge: 'right' | 'left'): Stretch => ({
  piece: band.name,
  make,
  part: band.parts[0]?.name ?? '',
  edge,
});

/** The pick-up of the neckband, or of all other bands. */
export function bandJoints(bands: readonly Recipe[], lines: BandLines, which: 'neck' | 'rest'): Joint[] {
  const collar = bands.find(({ role }) => role === 'neckband');
  return bands
    .filter(({ role }) => (role === 'neckband') === (which === 'neck'))
    .flatMap((band) =>
      band.role === 'armhole band'
        ? [armhole(band, lines, 1), armhole(band, lines, 2)]
        : [pickedUp(band, lines, collar)],
    );
}

function pickedUp(band: Recipe, lines: BandLines, collar: Recipe | undefined): Joint {
  return {
    kind: 'pick up',
    piece: band.name,
    make: 1,
    along: pickUpOf(band).map(({ along, stitches }) => ({
      line: band.role === 'front band' ? withCollar(along, lines, collar) : (lines[along] ?? []),
      stitches,
    })),
  };
}

/** A front band goes on along the side of the neckband, which is knitted before it. */
function withCollar(along: string, lines: BandLines, collar: Recipe | undefined): Line {
  const line = lines[along] ?? [];
  if (!collar) return line;
  if (along === 'right front edge') return [...line, sideOf(collar, 1, 'right')];
  if (along === 'left front edge') return [{ ...sideOf(collar, 1, 'left'), reversed: true }, ...line];
  return line;
}

/** With the right side facing, the left armhole begins with its front, the right one with its back. */
function armhole(band: Recipe, lines: BandLines, make: number): Joint {
  const edges = pickUpOf(band).map(({ along, stitches }) => ({
    line: lines[make === 1 ? along : `right ${along}`] ?? [],
    stitches,
  }));
  return { kind: 'pick up', piece: band.name, make, along: make === 1 ? edges : [...edges].reverse() };
}

/** The ends of a band that goes round are sewn together. */
export function closingsOf(
  bands: readonly Recipe[],
  role: 'neckband' | 'armhole band',
  isRound: boolean,
): Joint[] {
  if (!isRound) return [];
  return bands
    .filter((band) => band.role === role)
    .flatMap((band) =>
      Array.from(
        { length: band.makes },
        (_, i): Joint => ({
          kind: 'seam',
          of: 'band',
          a: [sideOf(band, i + 1, 'right')],
          b: [sideOf(band, i + 1, 'left')],
          how: 'mattress',
        }),
      ),
    );
}

/** Where bands are bound off, and the ends of those that do not go round. */
export function freeBandEdges(bands: readonly Recipe[], isOpen: boolean): Joint[] {
  const hasFrontBands = bands.some(({ role }) => role === 'front band');
  return bands.flatMap((band): Joint[] => {
    const as = band.role === 'neckband' ? 'neck' : band.role === 'armhole band' ? 'armhole' : 'front';
    const tops = Array.from({ length: band.makes }, (_, i): Joint => {
      const { piece, part } = sideOf(band, 1, 'right');
      return { kind: 'left free', line: [{ piece, make: i + 1, part, edge: 'top' }], as };
    });
    const ends = (['right', 'left'] as const).map((edge): Joint => {
      return { kind: 'left free', line: [sideOf(band, 1, edge)], as: 'front' };
    });
    const isFree = band.role === 'front band' || (band.role === 'neckband' && isOpen && !hasFrontBands);
    return isFree ? [...tops, ...ends] : tops;
  });
}
