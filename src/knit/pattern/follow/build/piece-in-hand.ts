import type { PieceHeading, Title } from '../../say/statement.ts';
import type { Build, PieceBuild } from './build.ts';
import { newPiece } from './part.ts';

/** The piece that the last heading named begins with its own stitches. */
export function startPending(build: Build): PieceBuild | undefined {
  const { pending, title } = build;
  build.pending = undefined;
  build.title = undefined;
  if (pending) return newPiece(build, pending);
  return title === undefined ? undefined : newPiece(build, pieceCalled(title));
}

/** One piece named by a line that only names something. */
export const pieceCalled = ({ words, half, makes = 1 }: Title): PieceHeading => ({
  name: words,
  makes,
  ...(half === undefined ? {} : { half }),
});

/** What is cast on before any heading. */
export const nameless: PieceHeading = { name: 'piece', makes: 1 };

/** The piece in hand; without a heading the text's first piece has no name of its own. */
export function pieceInHand(build: Build): PieceBuild {
  return build.piece ?? startPending(build) ?? newPiece(build, nameless);
}
