import type { PickUp } from '../piece/recipe.ts';
import type { SeamWay, Stretch } from './joint.ts';
import type { PickUpRatio } from './pick-up.ts';
import type { Worn } from './piece-edges.ts';
import type { RaglanLine } from './waiting-seam.ts';
import type { SeamUnit } from './work-making-up.ts';

/** How two edges of different length are sewn together: so many rows or stitches of the longer to the other's. */
export interface Ease {
  readonly first: number;
  readonly second: number;
  /** first − second; 0 when they match one to one */
  readonly difference: number;
  /** take one more of the longer edge after every so many; 0 when they match */
  readonly oneMoreEvery: number;
}

/** What the underarm of the body is sewn to: the sleeve's own bound-off stitches, or so many rows of its sides. */
export interface UnderarmSeam {
  readonly stitches: number;
  /** rows of the sleeve's sides that go into an indented armhole; 0 where the sleeve has stitches of its own */
  readonly rows: number;
}

/** One step of the making up, in its order. `id` is what a tick is kept under. */
export type MakingUpStep = {
  readonly id: string;
  /** the makes it is for, where others of the piece came out differently */
  readonly nos?: readonly number[];
  /** of a single half of a front: the side that it is worn on */
  readonly worn?: Worn;
} & (
  | {
      readonly kind: 'block';
      readonly piece: string;
      readonly makes: number;
      readonly widthMm: number;
      readonly heightMm: number;
    }
  /** `seams`: one where the other waits for the band, or is that of a half that came out otherwise; `side`: of one, which */
  | {
      readonly kind: 'shoulders';
      readonly back: string;
      readonly front: string;
      readonly stitches: Ease;
      readonly seams: number;
      readonly side?: Worn;
      readonly how: SeamWay;
      /** the other is left open for good, and buttoned */
      readonly isOtherButtoned?: true;
    }
  /** a band as it is planned: so many along each edge; `ratio` along rows; `percent` of what the edge has room for, where it is meant to be another count */
  | {
      readonly kind: 'pick up';
      readonly band: string;
      readonly edges: readonly PickUp[];
      readonly ratio: PickUpRatio;
      readonly percent?: number;
      readonly total: number;
    }
  /** the seam that was left open for a band worked in rows, and the band's ends in line with it */
  | {
      readonly kind: 'close';
      readonly band: string;
      readonly rows: number;
      readonly seam:
        | {
            readonly of: 'shoulder' | 'raglan';
            /** which; of a shoulder its side alone says it */
            readonly line: RaglanLine;
            readonly both: Ease;
            readonly how?: SeamWay;
          }
        | undefined;
    }
  /** a neck for which no band is planned yet: what its edges have to give */
  | { readonly kind: 'neck edge'; readonly edges: readonly BandEdge[]; readonly total: number }
  /** a raglan's lines, row to row; four, or three where one waits for the band; those of one sleeve where it came out otherwise */
  | {
      readonly kind: 'raglan';
      readonly sleeve: string;
      readonly seams: number;
      readonly waits?: RaglanLine;
      readonly rows: Ease;
      /** of a line that is sewn only as far as its opening: its rows */
      readonly asFarAsOpening?: Ease;
      readonly underarm: UnderarmSeam;
    }
  | {
      readonly kind: 'set in sleeves';
      readonly sleeve: string;
      /** the sleeve's top or cap edge, and the armhole of back and front that it is sewn to, mm */
      readonly topMm: number;
      readonly armholeMm: number;
      /** rows from the shoulder seam down to the underarm marker, on back and front */
      readonly markerRows: number;
      readonly markerMm: number;
      /** the piece that the markers are put on, and where: underarm and quarter points, mm above its cast-on */
      readonly on: string;
      readonly marksMm: readonly number[];
      /** quarter points of the armhole from the underarm, rows */
      readonly quarters: readonly number[];
      readonly underarm: UnderarmSeam;
    }
  | { readonly kind: 'side seams'; readonly back: string; readonly front: string; readonly rows: Ease }
  | { readonly kind: 'sleeve seams'; readonly sleeve: string; readonly rows: number }
  /** two edges that she joined herself; an edge is undefined where it is there no more */
  | {
      readonly kind: 'join';
      /** id of the seam */
      readonly seam: string;
      readonly how: SeamWay;
      /** what both are held against each other by */
      readonly unit: SeamUnit;
      readonly edges: readonly [JoinedEdge | undefined, JoinedEdge | undefined];
    }
  /** sewn on opposite the holes of a band: stitches above its lower end; `on` the band of the other front, where there is one */
  | {
      readonly kind: 'buttons';
      readonly band: string;
      readonly stitches: readonly number[];
      readonly on?: string;
    }
  /** a back that is parted below its neck, or a raglan's line that is left open at its top: closed with a button; `rows` of one side */
  | { readonly kind: 'opening'; readonly of: 'back' | 'raglan'; readonly rows: number }
  /** an open shoulder's band laid on the back and buttoned, the bands of both shoulders over each other, or those of a placket; `rows` that lie over, and how many buttons */
  | {
      readonly kind: 'lap';
      readonly of: 'left shoulder' | 'both shoulders' | 'placket';
      /** of a placket, the one that lies on top */
      readonly band?: string;
      readonly rows: number;
      readonly buttons?: number;
    }
  | { readonly kind: 'ends' }
);

export interface JoinedEdge {
  readonly stretch: Stretch;
  /** rows or stitches; 0 where they are held by their lengths */
  readonly count: number;
  readonly mm: number;
}

export interface BandEdge {
  readonly along: 'side of neck' | 'front neck' | 'back neck';
  readonly times: number;
  /** rows or stitches of the edge */
  readonly rows: number | undefined;
  readonly ratio: PickUpRatio | undefined;
  readonly stitches: number;
}

/** How many more of one edge go to the other, evenly. */
export function easeOf(first: number, second: number): Ease {
  const difference = first - second;
  const shorter = Math.min(first, second);
  const more = Math.abs(difference);
  return {
    first,
    second,
    difference,
    oneMoreEvery: more === 0 ? 0 : Math.max(1, Math.floor(shorter / more)),
  };
}
