import { beforeEach, describe, expect, it } from 'vitest';
import { openCount } from '../../../src/app/in-hand/count.ts';
import { finishRow, openMake } from '../../../src/app/in-hand/knit.ts';
import {
  draftFrom,
  openSections,
  proposed,
  rhythmAhead,
  wishKinds,
} from '../../../src/app/in-hand/rework-draft.ts';
import { type InHand, inHand } from '../../../src/app/state.ts';
import { openApp } from '../open-app.ts';

const shown = (): InHand => {
  const now = inHand.value;
  if (!now) throw new Error('no make in hand');
  return now;
};

beforeEach(async () => {
  const { back } = await openApp();
  await openMake(back);
  await openCount(back);
});

describe('what can be wished of the rows to come', () => {
  it('before the first row is a count or a length, and no height, since nothing is there to measure', () => {
    expect(wishKinds(shown())).not.toContain('measured');
    expect(wishKinds(shown())).toContain('accept');
    expect(wishKinds(shown())).toContain('rows');
  });

  it('after a row is also the height that she measures', async () => {
    await finishRow();
    expect(wishKinds(shown()).slice(0, 2)).toEqual(['accept', 'measured']);
  });

  it('is of a stretch that has rows left, by its place in the recipe', () => {
    const [first] = openSections(shown());
    expect(first?.index).toBe(0);
    expect(first?.rows).toBeGreaterThan(0);
  });
});

describe('what has changed', () => {
  const saidBy = (query: string) => draftFrom(shown(), new URLSearchParams(query)).kind;

  it('is hers to say where the count agrees, and a count that differs where that led to it', () => {
    const planned = draftFrom(shown(), new URLSearchParams()).stitches;
    expect(planned).toBeGreaterThan(0);
    expect(saidBy('')).toBeUndefined();
    expect(saidBy(`stitches=${planned}`)).toBeUndefined();
    expect(saidBy('stitches=3')).toBe('accept');
    expect(saidBy('wish=shoulder')).toBe('shoulder');
  });
});

describe('a plan proposed', () => {
  it('of the count that is on the needle is none', () => {
    expect(proposed(shown(), draftFrom(shown(), new URLSearchParams()))).toBeUndefined();
  });

  it('of two rows more in a stretch has two rows more', () => {
    const draft = draftFrom(shown(), new URLSearchParams());
    const [first] = openSections(shown());
    const made = proposed(shown(), { ...draft, kind: 'rows', rows: (first?.rows ?? 0) + 2 });
    if (!made?.ok) throw new Error('not planned');
    expect(made.value.parts[0]?.part.rows).toHaveLength(shown().part.rows.length + 2);
  });
});

describe('the rhythm of the shapings to come', () => {
  const row = (n: number, section: number, kind: 'edge' | 'middle' = 'edge') => ({
    n,
    section,
    shaping: [{ kind, edge: kind === 'edge' ? 'right' : 'middle', by: -1 }],
  });
  const at = (rows: number, section: number) =>
    rhythmAhead(
      {
        part: { rows: [row(3, 0), row(5, 0, 'middle'), row(9, 0), row(11, 0), row(15, 1), row(17, 1)] },
        place: { rows },
      } as unknown as InHand,
      section,
    );

  it('is from the next of its section to the one after it, at the edges alone', () => {
    expect([at(0, 0), at(2, 0), at(3, 0), at(8, 0)]).toEqual([6, 6, 2, 2]);
    expect(at(0, 1)).toBe(2);
  });

  it('is none where one comes or none', () => {
    expect([at(9, 0), at(11, 0), at(15, 1), at(0, 2)]).toEqual([undefined, undefined, undefined, undefined]);
  });
});

describe('the rest of a section otherwise', () => {
  it('is another plan where her fabric, needle or rhythm is said, and none where nothing is', () => {
    const draft = { ...draftFrom(shown(), new URLSearchParams('wish=section')), kind: 'section' as const };
    expect(proposed(shown(), draft)).toBeUndefined();
    const made = proposed(shown(), { ...draft, needle: 6 });
    if (!made?.ok) throw new Error('no plan');
    const needles = made.value.parts.flatMap(({ part }) => part.rows.map(({ needle }) => needle));
    expect(needles).toContain(6);
    const purl = proposed(shown(), { ...draft, fabric: 'garter' });
    if (!purl?.ok) throw new Error('no plan');
    expect(purl.value.parts[0]?.part.sections.map(({ fabric }) => fabric)).toContain('garter');
  });
});
