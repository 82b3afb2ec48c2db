import type { Statement } from '../say/statement.ts';
import type { Build } from './build/build.ts';
import { isDone, setMark } from './build/part.ts';
import { startPending } from './build/piece-in-hand.ts';
import { beginSection } from './build/told-section.ts';

/** 'BACK', 'Sleeves (make 2)', 'Shape armholes', 'Finishing'. */
export function doHeading(build: Build, said: Extract<Statement, { is: 'heading' }>): void {
  const { part: now } = build;
  if (said.section && now && !isDone(now)) {
    build.talk = false;
    beginSection(build, now, said.title.words, said.section);
    return;
  }
  build.defining = undefined;
  // 'To make up' has no rows; 'To make slots' on a needle has
  build.talk = said.talk && (isDone(build.part) || !/^to make (?!up)/.test(said.title.words));
  if (said.piece && isBegun(build, said.piece.name)) return;
  if (said.piece && !(said.sideOnly && build.piece !== undefined)) {
    build.pending = said.piece;
    build.title = undefined;
    build.heading = undefined;
    if (isDone(build.part) && !(build.piece && build.piece.resting.length > 0)) startPending(build);
    else if (build.piece && build.part) {
      build.part.closed = true;
      setMark(build.piece, 'heading', build.part);
    }
    return;
  }
  build.heading = said.title;
  const { piece, part } = build;
  if (!piece || !part) return;
  part.closed = true;
  for (const place of said.places) setMark(piece, place, part);
  setMark(piece, 'heading', part);
  setMark(piece, 'section', part);
}

/** 'RIGHT FRONT' above 'Work right front as for left front': the same piece, named once more before it has a row. */
const isBegun = ({ piece }: Build, name: string): boolean =>
  piece?.parts.length === 0 && piece.name.toLowerCase() === name.toLowerCase();
