import { describe, expect, it } from 'vitest';
import { freshNotes } from '../../../../../src/knit/pattern/follow/build/notes.ts';
import { closesGap, countAfter, noteCount } from '../../../../../src/knit/pattern/follow/build/uncounted.ts';
import { castOn } from './in-hand.ts';

/** A row that nobody understood left 20 stitches as far as anybody knows; so many are on the needle now. */
function gap(live: number, again = true) {
  const hand = castOn(live);
  const note = { ...freshNotes(), asksCount: true };
  const sentence = {};
  const counts = { known: new Map(), found: new Map(), again };
  hand.part.uncounted = { sentence, after: 20, note };
  return { ...hand, build: { ...hand.build, counts }, note, sentence };
}

/** Worked out by hand: what was taken or made since the row that was not understood is taken back from the count. */
describe('a count stated further on', () => {
  it.each([
    ['tells of more stitches', 20, 24, 24],
    ['tells of fewer', 20, 17, 17],
    ['is that of a row that took two since', 18, 22, 24],
    ['is that of a row that made two since', 22, 25, 23],
    ['may leave one stitch', 22, 3, 1],
  ])(
    '%s: %i on the needle, %i stated, %i behind the row that was not understood',
    (_, live, stated, found) => {
      const { build, part, sentence, note } = gap(live);
      expect(closesGap(build, part, stated, 7)).toBe(true);
      expect(build.counts.found.get(sentence)).toEqual({ stitches: found, line: 7 });
      expect([part.uncounted, note.asksCount]).toEqual([undefined, true]);
    },
  );

  it('that contradicts nothing is asked for no more', () => {
    const { build, part, note } = gap(18);
    expect(closesGap(build, part, 18, 7)).toBe(true);
    expect([note.asksCount, note.countedBy]).toEqual([false, { stitches: 20, line: 7 }]);
    expect(build.counts.found.size).toBe(0);
  });

  it('that would leave no stitch is one that contradicts', () => {
    const { build, part, note } = gap(22);
    expect(closesGap(build, part, 2, 7)).toBe(false);
    expect([build.counts.found.size, note.countedBy, part.uncounted]).toEqual([0, undefined, undefined]);
  });

  it('closes nothing where nothing is open, or where it was read often enough', () => {
    const { build, part } = castOn(20);
    expect(closesGap(build, part, 24, 7)).toBe(false);
    const last = gap(20, false);
    expect(closesGap(last.build, last.part, 24, 7)).toBe(false);
    expect(last.build.counts.found.size).toBe(0);
  });
});

describe('the count after a sentence that was not understood', () => {
  it('is the one that it states, the one found further on, or the one before it', () => {
    const { build, part, sentence } = gap(20);
    expect(countAfter(build, part, sentence)).toBe(20);
    build.counts.known.set(sentence, { stitches: 24, line: 7 });
    expect(countAfter(build, part, sentence)).toBe(24);
    expect(countAfter(build, part, sentence, 22)).toBe(22);
  });

  it('is asked for where nobody states it', () => {
    const { build, part, sentence } = gap(20);
    const [stated, known, open] = [freshNotes(), freshNotes(), freshNotes()];
    noteCount(build, part, sentence, stated, 22);
    expect([stated.stated, stated.asksCount, part.uncounted]).toEqual([[22], false, undefined]);
    noteCount(build, part, sentence, open);
    expect([open.asksCount, open.countedBy, part.uncounted?.after]).toEqual([true, undefined, 20]);
    build.counts.known.set(sentence, { stitches: 24, line: 7 });
    noteCount(build, part, sentence, known);
    expect([known.asksCount, known.countedBy?.line, part.uncounted]).toEqual([false, 7, undefined]);
  });
});
