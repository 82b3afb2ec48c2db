import { attempt, type Cursor, peek, sees, seesPhrase, takes } from '../../../row/read/cursor.ts';

/** 'with 2 strands of yarn', 'using MC', 'with white': passed over. */
export const skipYarn = (c: Cursor): boolean =>
  attempt(c, () => {
    if (takes(c, 'with', 'using', 'in', 'holding')) {
      let far = 0;
      while (far < 7 && c.at < c.end) {
        if (takes(c, ',')) return true;
        if (sees(c, 'cast', 'co', 'k', 'p', 'work', 'pick', 'bind') && far > 0) return true;
        if (sees(c, 'rs', 'ws', 'right', 'wrong')) break;
        if (peek(c)?.kind === 'number' && !seesPhrase({ ...c, at: c.at + 1 }, 'strands|strand|ply|ball'))
          break;
        c.at += 1;
        far += 1;
      }
    }
    return false;
  });
