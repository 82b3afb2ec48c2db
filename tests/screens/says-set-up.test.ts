import { beforeAll, describe, expect, it } from 'vitest';
import { loadWords, say } from '../../src/words/say.ts';

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
