import type { Build, PartBuild } from '../../../../../src/knit/pattern/follow/build/build.ts';
import { newPart, newPiece } from '../../../../../src/knit/pattern/follow/build/part.ts';
import type { Side } from '../../../../../src/knit/row/step.ts';

/** A text of which nothing is read yet. */
export const freshBuild = (): Build => ({
  gauge: undefined,
  gaugeInPattern: false,
  gaugeBegun: undefined,
  patterns: new Map(),
  pieces: [],
  begun: [],
  namesTaken: new Map(),
  full: false,
  piece: undefined,
  part: undefined,
  defining: undefined,
  heading: undefined,
  needle: 4,
  pending: undefined,
  title: undefined,
  talk: false,
  line: 1,
  faults: [],
  meanwhile: [],
  stretches: {},
  worded: new Map(),
  unread: new WeakMap(),
  cells: 0,
  later: [],
  recent: [],
});

/** So many stitches, cast on for a piece of their own. */
export function castOn(live: number, firstSide: Side = 'RS', name = 'back') {
  const build = freshBuild();
  const piece = newPiece(build, { name, makes: 1 });
  const part: PartBuild = newPart(build, piece, { name: 'body', from: { castOn: live }, live, firstSide });
  return { build, piece, part };
}
