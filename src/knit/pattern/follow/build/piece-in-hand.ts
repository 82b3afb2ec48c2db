import type { Build, PieceBuild } from './build.ts';
import { newPiece } from './part.ts';

/** The piece that the last heading named begins with its own stitches. */
export function startPending(build: Build): PieceBuild | undefined {
  const { pending, title } = build;
  build.pending = undefined;
  build.title = '';
  if (pending) return newPiece(build, pending.name, pending.makes);
  return title === '' ? undefined : newPiece(build, title, 1);
}

export const firstWord = (name: string): string => name || 'piece';

/** The piece in hand; without a heading the text's first piece has no name of its own. */
export function pieceInHand(build: Build): PieceBuild {
  return build.piece ?? startPending(build) ?? newPiece(build, firstWord(''), 1);
}
