import type { PartBuild } from '../../../../../src/knit/pattern/follow/build/build.ts';
import { freshBuild } from '../../../../../src/knit/pattern/follow/build/fresh-build.ts';
import { newPart, newPiece } from '../../../../../src/knit/pattern/follow/build/part.ts';
import type { Side } from '../../../../../src/knit/row/step.ts';

/** So many stitches, cast on for a piece of their own. */
export function castOn(live: number, firstSide: Side = 'RS', name = 'back') {
  const build = freshBuild();
  const piece = newPiece(build, { name, makes: 1 });
  const part: PartBuild = newPart(build, piece, { name: 'body', from: { castOn: live }, live, firstSide });
  return { build, piece, part };
}
