import type { Statement } from '../say/statement.ts';
import type { Build } from './build/build.ts';
import { isDone, setMark } from './build/part.ts';
import { startPending } from './build/piece-in-hand.ts';

const TALK =
  /^(finishing|materials|abbreviations|measurements|notes?|needles|yarn|making|makeup|assembly|blocking|pressing|general|tips|equipment|supplies|terms|schematic|level|special|to (make|finish)|instructions|directions)\b/;

const PLACES: readonly (readonly [RegExp, string])[] = [
  [/armhole|underarm/, 'armhole'],
  [/raglan/, 'raglan'],
  [/shoulder/, 'shoulder'],
  [/neck|\bv\b/, 'neck'],
  [/cap|sleeve top|top/, 'cap'],
  [/waist/, 'waist'],
];

/** 'BACK', 'Sleeves (make 2)', 'Shape armholes', 'Finishing'. */
export function doHeading(build: Build, said: Extract<Statement, { is: 'heading' }>): void {
  const { words } = said;
  build.defining = undefined;
  build.talk = TALK.test(words);
  if (said.piece && !isPlaceOnly(words, build)) {
    build.pending = said.piece;
    build.title = '';
    build.heading = '';
    if (isDone(build.part) && !(build.piece && build.piece.resting.length > 0)) startPending(build);
    else if (build.piece && build.part) {
      build.part.closed = true;
      setMark(build.piece, 'heading', build.part);
    }
    return;
  }
  build.heading = words;
  const { piece, part } = build;
  if (!piece || !part) return;
  part.closed = true;
  for (const [pattern, place] of PLACES) if (pattern.test(words)) setMark(piece, place, part);
  setMark(piece, 'heading', part);
  setMark(piece, 'section', part);
}

/** 'Left side' while a piece is in work is no piece of its own. */
const isPlaceOnly = (words: string, build: Build): boolean =>
  /\b(side|half|shoulder)$/.test(words) && build.piece !== undefined;
