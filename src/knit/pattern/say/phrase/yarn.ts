import { attempt, type Cursor, peek, peekText, seesPhrase, takes } from '../../../row/read/cursor.ts';

/** 'with 2 strands of yarn', 'using MC', 'with white': passed over. */
export const skipYarn = (c: Cursor): boolean =>
  attempt(c, () => {
    if (takes(c, 'with', 'using', 'in', 'holding')) {
      let far = 0;
      while (far < 7 && c.at < c.end) {
        if (takes(c, ',')) return true;
        if (/^(cast|co|k|p|knit|purl|work|pick|bind)$/.test(peekText(c)) && far > 0) return true;
        if (/^(rs|ws|right|wrong)$/.test(peekText(c))) break;
        if (peek(c)?.kind === 'number' && !seesPhrase({ ...c, at: c.at + 1 }, 'strands|strand|ply|balls'))
          break;
        c.at += 1;
        far += 1;
      }
    }
    return false;
  });
