import type { PickUp, PieceRole } from '../piece/recipe.ts';
import type { Joint, Line } from './joint.ts';
import type { KnittedPiece } from './knitted-piece.ts';
import type { WorkedJoint } from './work-making-up.ts';

/** The pieces of a garment, makes that came out alike as one. */
export class PieceGroups {
  constructor(private readonly pieces: readonly (readonly KnittedPiece[])[]) {}

  all = (): readonly KnittedPiece[] => this.pieces.flat();

  /** Bands are knitted on: they are not blocked. */
  blocked = (): readonly KnittedPiece[] => this.all().filter((piece) => pickUpsOf(piece).length === 0);

  of(...roles: readonly PieceRole[]): KnittedPiece | undefined {
    return this.all().find(({ role }) => roles.includes(role));
  }

  /** The makes that a line's piece belongs to, where its role is one of these. */
  along(lines: readonly Line[], ...roles: readonly PieceRole[]): KnittedPiece | undefined {
    for (const { piece, make } of lines.flat()) {
      const found = this.all().find(
        ({ recipe, role, nos }) =>
          recipe.name === piece && roles.includes(role) && (nos === undefined || nos.includes(make)),
      );
      if (found) return found;
    }
    return undefined;
  }

  /** The id of the step that a joint belongs to; undefined where it is none. */
  stepOf({ joint }: WorkedJoint, worked: readonly WorkedJoint[]): string | undefined {
    if (joint.kind === 'pick up') return `pick up ${joint.piece}`;
    if (joint.kind === 'left free') return this.isOpenNeck(joint) ? 'neck edge' : undefined;
    const band = bandBefore(joint, worked);
    const lines = [joint.a, joint.b];
    const mark = (...roles: readonly PieceRole[]) => this.along(lines, ...roles)?.mark ?? '';
    switch (joint.of) {
      case 'shoulder':
        return band === undefined ? `shoulders${mark(...FRONTS)}` : `close ${band}`;
      case 'raglan':
        return band === undefined ? `set in sleeves${mark('sleeve')}` : `close ${band}`;
      case 'armhole':
      case 'underarm':
        return `set in sleeves${mark('sleeve')}`;
      case 'side':
        return `side seams${mark(...FRONTS)}`;
      case 'sleeve':
        return `sleeve seams${mark('sleeve')}`;
      case 'band':
        return `close ${joint.a[0]?.piece ?? ''}`;
      case 'lap':
        return 'lap';
      case 'other':
        return joint.byHand === undefined ? undefined : `join ${joint.byHand}`;
    }
  }

  private isOpenNeck({ as, line }: Extract<Joint, { kind: 'left free' }>): boolean {
    const hasBand = this.all().some((piece) => pickUpsOf(piece).length > 0);
    return (
      as === 'neck' &&
      !hasBand &&
      line.length > 0 &&
      this.of('back') !== undefined &&
      this.of(...FRONTS) !== undefined
    );
  }
}

export const FRONTS = ['front', 'left front', 'right front'] as const;

/** What a band is picked up along; nothing for another piece. */
export const pickUpsOf = ({ recipe }: KnittedPiece): readonly PickUp[] => {
  const from = recipe.parts[0]?.from;
  return from && 'pickUp' in from ? from.pickUp : [];
};

/** The neckband that was picked up before this seam was sewn. */
function bandBefore(joint: Joint, worked: readonly WorkedJoint[]): string | undefined {
  for (const { joint: one } of worked) {
    if (one === joint) return undefined;
    if (one.kind === 'pick up') return one.piece;
  }
  return undefined;
}
