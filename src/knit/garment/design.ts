import type { FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import type { TurnWay } from '../piece/turn-way.ts';
import type { ArmholeKind } from './kinds/armholes.ts';
import type { GarmentKind } from './kinds/garments.ts';
import type { NeckOpening } from './kinds/neck-openings.ts';
import type { NeckMiddle, NeckShape } from './kinds/necks.ts';
import type { ShoulderEnd, ShoulderWay } from './kinds/shoulders.ts';
import type { Silhouette } from './kinds/silhouettes.ts';
import type { SleeveShape } from './kinds/sleeve-shapes.ts';

/** A body, all in mm. Circumferences unless said. */
export interface Body {
  readonly chest: number;
  readonly waist: number;
  readonly hip: number;
  /** from shoulder point to shoulder point across the back */
  readonly crossBack: number;
  /** from the nape's middle over the shoulder to the wrist */
  readonly napeToWrist: number;
  /** from the nape down to the waist */
  readonly napeToWaist: number;
  /** from the underarm to the wrist */
  readonly arm: number;
  readonly upperArm: number;
  readonly wrist: number;
  /** from the shoulder point straight down to the underarm */
  readonly armholeDepth: number;
  readonly head: number;
}

/** What the garment is wider than the body, mm; below zero it stretches. */
export interface Ease {
  readonly chest: number;
  readonly waist: number;
  readonly hip: number;
  readonly upperArm: number;
  readonly wrist: number;
  /** across the back */
  readonly crossBack: number;
  /** added to the armhole's depth */
  readonly armholeDepth: number;
}

export type Edition = 2 | 3;

/** It is drafted by the rules of that edition, or by later ones. */
export const isSince = (since: Edition, { edition }: { readonly edition?: Edition | undefined }): boolean =>
  edition !== undefined && edition >= since;

export const holesInFronts = ['right front', 'left front'] as const;
export type HolesIn = (typeof holesInFronts)[number];

/** How deep an opening is where nothing is said; a shorter one is no help; common practice, no published source. */
export const USUAL_OPENING_MM = 50;

/** A border worked on its own fabric: a hem, a cuff, a band. Height 0: none. */
export interface Border {
  readonly fabric: FabricName;
  readonly heightMm: number;
}

/** Everything that a garment is drafted from. Plain data, lengths in mm. */
export interface Design {
  readonly kind: GarmentKind;
  readonly armhole: ArmholeKind;
  readonly body: Body;
  readonly ease: Ease;
  /** from the top of the shoulder, at the neck, to the lower edge */
  readonly lengthMm: number;
  readonly silhouette: Silhouette;
  readonly neck: {
    readonly shape: NeckShape;
    readonly widthMm: number;
    /** from the top of the shoulder down, in front and behind */
    readonly depthMm: number;
    readonly backDepthMm: number;
    /** how it opens for heads that it does not pass; none unless said */
    readonly opening?: NeckOpening;
    /** how deep it opens from the back neck down, or from the top of a raglan; 50 unless said */
    readonly openingMm?: number;
    /** what becomes of the stitches that lie in its middle, in front and behind; bound off unless said */
    readonly middle?: NeckMiddle;
  };
  /** how much lower the shoulder lies at the arm than at the neck; 0: straight. Of a raglan: added to its depth */
  readonly shoulderDropMm: number;
  /** how a sloped shoulder is worked; in bound-off steps unless said */
  readonly shoulder?: ShoulderWay;
  /** how the turns of short rows are worked and their gaps closed; left to her unless said */
  readonly turns?: TurnWay;
  /** what becomes of a shoulder worked in short rows; bound off unless said */
  readonly shoulderEnd?: ShoulderEnd;
  /** stitches bound off at the underarm before a raglan, set-in or indented armhole, as a width; the usual share where it is left out */
  readonly underarmMm?: number;
  readonly sleeve: {
    readonly shape: SleeveShape;
    readonly direction: 'cuff up' | 'top down';
    /** to the underarm; from the body's measures where it is left out */
    readonly lengthMm?: number;
    /** no longer than to the wrist as it is measured from the nape, where a cap or a raglan's line is long; the arm alone says it unless said */
    readonly endsAtWrist?: boolean;
    /** how much longer the cap's edge is than the armhole it is sewn to, in hundredths */
    readonly capEase: number;
    /** width of a set-in cap that is bound off last; a quarter of the sleeve, and what its curve leaves there, unless said */
    readonly capTopMm?: number;
  };
  readonly hem: Border & {
    /** 'fitted': the rib's own count, made up in the first row above it; 'as body': the same count as above it */
    readonly count: 'fitted' | 'as body';
  };
  readonly cuff: Border;
  readonly neckband: Border & { readonly mitre: 'every row' | 'every second row' };
  readonly frontBand: Border & {
    readonly buttons: number;
    /** the front that lies on top; the right one unless said */
    readonly holesIn?: HolesIn;
    /** across a button, mm; holes of two stitches where it is left out */
    readonly buttonMm?: number;
  };
  readonly armholeBand: Border & {
    /** stitches picked up for each hundred that lie along the armhole; a hundred unless said */
    readonly percent?: number;
  };
  /** one stitch more at each edge that is sewn or picked up along, so that seams take nothing of what was asked */
  readonly seamStitch?: boolean;
  /**
   * which rules it is drafted by: of the second edition a V neck and what is sewn to it keep one rhythm after the other,
   * button holes stand at one distance, and a sleeve's straight top has stitches for its seam; of the third a band takes up
   * what a shallow V binds off. The first where left out, so that what was designed by it comes out alike for ever
   */
  readonly edition?: Edition;
  /** fabric of the panels */
  readonly fabric: FabricName;
  /** as swatched; a fabric without one takes the usual ratio to the panels' own */
  readonly gauges: Partial<Readonly<Record<FabricName, Gauge>>>;
  /** mm */
  readonly needles: { readonly panels: number; readonly borders: number };
  /** edges that slant: shaping rows as near the line as can be, or longer intervals kept together so that they are easy to keep in mind */
  readonly tapers: 'blended' | 'together';
  /** codes of warnings that she has overruled */
  readonly overruled: readonly string[];
}
