import { beforeAll, describe, expect, it } from 'vitest';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';
import { loadWords, say } from '../../src/words/say.ts';
import { saysSetUp } from '../../src/words/set-up.ts';

beforeAll(() => loadWords('knitting', 'partEnd', 'craft'));

/** The first shoulder is worked on with the yarn of the body; only the second needs it joined (common practice, no published source). */
describe('where the neck parts the work', () => {
  it('the yarn is not cut', () => {
    expect(say('partEnd.endSplit', { count: 76 })).toContain('the yarn uncut');
  });

  it('the yarn is joined only where it does not hang, and the part is named once', () => {
    const said = say('knitting.setUpTake', {
      count: 25,
      edge: say('craft.rightEdge'),
      part: 'Back',
      needle: '4 mm',
      first: 'right side',
    });
    expect(said).toContain('unless it hangs there');
    expect(said).not.toContain('Back back');
  });
});

/** A band is picked up stretch by stretch, and what rests is only taken up: pages of leaflets name each edge with its count. */
describe('a band that is picked up', () => {
  const part = {
    name: 'Neckband',
    start: 94,
    rows: [],
    sections: [{ needle: 3.5 }],
    from: {
      pickUp: [
        { along: 'left front neck', stitches: 19 },
        { along: 'middle of the front neck', stitches: 14, held: true },
        { along: 'right front neck', stitches: 61 },
      ],
    },
  } as unknown as PlannedPart;

  it('names each stretch with its count, and what rests on a holder as that', () => {
    const said = saysSetUp(part);
    expect(said).toContain('19 along the left front neck');
    expect(said).toContain('14 from a holder along the middle of the front neck');
    expect(said).toContain('61 along the right front neck');
    expect(said).toContain('94 in all');
  });
});
