import { describe, expect, it } from 'vitest';
import { castOnAhead, takeFrontDoor } from '../../../../src/knit/pattern/say/front-door.ts';
import { statedAtEnd } from '../../../../src/knit/pattern/say/phrase/stated-count.ts';
import { cursorOver } from '../../../../src/knit/row/read/cursor.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a cast-on behind other words', () => {
  it.each([
    ['To make flap, cast on 18 sts', 'anew'],
    ['Starting at the hem, and cast on 18 sts', 'anew'],
    ['Then cast on 18 sts', undefined],
    [', then cast on 18 sts', undefined],
    ['And cast on 18 sts', undefined],
    [', cast on 18 sts', undefined],
    ['And, while cast on 18 sts', undefined],
    ['Cast on 18 sts', undefined],
    ['For front of neck, cast on 18 sts', 'at neck'],
    ['For the neckline cast on 18 sts', 'at neck'],
    ['For underarm, cast on 18 sts', 'at armhole'],
    ['For the front, cast on 18 sts', 'anew'],
    ['For neckband, cast on 18 sts', 'anew'],
    ['To make flap, knit 18 sts', undefined],
  ])('begins something or goes on: %s', (text, begins) => {
    expect(takeFrontDoor(cursorOver(lex(text)), () => undefined)).toBe(begins);
  });

  it.each([
    ['Cast on 18 sts', 0],
    ['Cast on (18 sts', 0],
    ['Cast on [18 sts', 0],
    ['Loosely cast on 18 sts', 0],
    ['At hem cast on 18 sts', 2],
    ['Cast on 18½ sts', undefined],
    ['Cast on 18 more sts', undefined],
    ['Cast on 18 new sts', undefined],
    ['Cast on 18 additional sts', undefined],
    ['Cast on 18 extra sts', undefined],
    ['Cast on as many sts', undefined],
    ['Cast on 18 cm', undefined],
    ['Cast on 18 sts at each end', undefined],
    ['Cast on 18 sts, then k across the rem 40 sts', undefined],
  ])('is the first one of the text, or none: %s', (text, at) => {
    expect(castOnAhead(cursorOver(lex(text)))).toBe(at);
  });

  it.each([
    ['repeat last 2 rows    18 sts', 18],
    ['repeat last 2 rows 18 sts', undefined],
    ['repeat it 4 times  18 sts', undefined],
    ['repeat it 4 times   18 sts', 18],
    ['repeat it 4 times    18 sts', 18],
    ['repeat it 4 times 18 sts', undefined],
    ['repeat it 4 times (18 sts)', 18],
  ])('and a count is stated in a column of its own, behind a gap: %s', (text, stitches) => {
    expect(statedAtEnd(cursorOver(lex(text)))?.stitches).toBe(stitches);
  });
});
