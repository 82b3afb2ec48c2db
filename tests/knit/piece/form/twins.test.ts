import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../../../src/knit/garment/sample.ts';
import { checkPiece } from '../../../../src/knit/piece/form/check.ts';
import { mirrorPart } from '../../../../src/knit/piece/form/edit-parts.ts';
import type { PartForm, PieceForm } from '../../../../src/knit/piece/form/form.ts';
import { changeWithTwins, twinOf, unevenWith } from '../../../../src/knit/piece/form/twins.ts';
import { recipeToForm } from '../../../../src/knit/piece/form/write-piece.ts';

const front = recipeToForm(sampleGarment.pieces.find(({ name }) => name === 'Front') as never);
const partOf = (form: PieceForm, index: number): PartForm => form.parts[index] as PartForm;
const sides = front.parts.flatMap((part, i) =>
  part.start.kind === 'split' && part.start.edge !== 'middle' ? [i] : [],
);
const [lead = -1, twin = -1] = sides;

/** Two decreases more at the neck's edge of a part. */
const longerNeck = (part: PartForm): PartForm => ({
  ...part,
  sections: part.sections.map((section, i) =>
    i === 0 ? { ...section, rows: String(Number(section.rows) + 2) } : section,
  ),
});

describe('a part that is the mirror image of another', () => {
  it('is known as such in the sample front, whose shoulders are written out both', () => {
    expect(sides).toHaveLength(2);
    expect(twinOf(front, twin)).toBe(lead);
    expect(twinOf(front, lead)).toBeUndefined();
    expect(twinOf(front, 0)).toBeUndefined();
  });

  it('follows a change of the other, keeps its own name, and every row still works out', () => {
    const changed = changeWithTwins(front, lead, longerNeck);
    expect(partOf(changed, lead).sections[0]?.rows).toBe('60');
    expect(partOf(changed, twin).sections[0]?.rows).toBe('60');
    expect(partOf(changed, twin).name).toBe(partOf(front, twin).name);
    expect(twinOf(changed, twin)).toBe(lead);
    expect(checkPiece(changed).faults).toEqual([]);
  });

  it('sides of unequal rows are told; a row more for a group at the other edge is none', () => {
    expect(unevenWith(front, twin)).toBeUndefined();
    const rows = (part: PartForm) => part.sections.reduce((sum, section) => sum + Number(section.rows), 0);
    const longer = changeWithTwins(front, twin, longerNeck);
    expect(unevenWith(longer, twin)).toEqual({
      part: lead,
      rows: rows(partOf(longer, twin)),
      other: rows(partOf(longer, lead)),
    });
    expect(unevenWith(longer, lead)).toBeUndefined();
    // nothing is told while a number is not said: neither left out nor blank
    for (const rows of ['', '  ']) {
      const blank = changeWithTwins(longer, twin, (part) => ({
        ...part,
        sections: [...part.sections, { ...(part.sections[0] as PartForm['sections'][number]), rows }],
      }));
      expect(unevenWith(blank, twin)).toBeUndefined();
    }
    const empty = changeWithTwins(front, twin, (part) => ({ ...part, sections: [] }));
    expect(unevenWith(empty, twin)).toBeUndefined();
  });

  it('changed itself it goes its own way, and follows no more', () => {
    const alone = changeWithTwins(front, twin, longerNeck);
    expect(partOf(alone, lead)).toBe(partOf(front, lead));
    expect(twinOf(alone, twin)).toBeUndefined();
    const after = changeWithTwins(alone, lead, (part) => ({ ...part, end: 'hold' }));
    expect(partOf(after, twin)).toBe(partOf(alone, twin));
  });

  it('a copy mirrored by hand is one too; rows spelled out in words are none, since words have no mirror', () => {
    const bare = { ...front, parts: front.parts.filter((_, i) => i !== twin) };
    const mirrored = mirrorPart(bare, lead, 'Other side');
    expect(twinOf(mirrored, lead + 1)).toBe(lead);
    const worded = (part: PartForm): PartForm => ({
      ...part,
      sections: part.sections.map((section) => ({ ...section, words: [] as never })),
    });
    expect(twinOf({ ...mirrored, parts: mirrored.parts.map(worded) }, lead + 1)).toBeUndefined();
  });

  it('is one in whatever order its fields were stored', () => {
    const turned = (value: unknown): unknown =>
      Array.isArray(value)
        ? value.map(turned)
        : value !== null && typeof value === 'object'
          ? Object.fromEntries(
              Object.entries(value)
                .map(([key, one]) => [key, turned(one)] as const)
                .reverse(),
            )
          : value;
    const parts = front.parts.map((part, i) => (i === twin ? (turned(part) as PartForm) : part));
    expect(twinOf({ ...front, parts }, twin)).toBe(lead);
    expect(partOf(changeWithTwins({ ...front, parts }, lead, longerNeck), twin).sections[0]?.rows).toBe('60');
  });

  it('takes its stitches from the same part, at the other edge, and is as long', () => {
    const twinIs = (change: (part: PartForm) => PartForm) =>
      twinOf({ ...front, parts: front.parts.map((part, i) => (i === twin ? change(part) : part)) }, twin);
    expect(twinIs((part) => ({ ...part, start: { ...part.start, part: 'Yoke' } as never }))).toBeUndefined();
    expect(twinIs((part) => ({ ...part, start: partOf(front, lead).start }))).toBeUndefined();
    expect(twinIs((part) => ({ ...part, end: 'hold' }))).toBeUndefined();
    expect(twinIs((part) => ({ ...part, sections: part.sections.slice(1) }))).toBeUndefined();
    expect(twinIs(longerNeck)).toBeUndefined();
    expect(twinIs((part) => ({ ...part, name: 'Other' }))).toBe(lead);
  });

  it('in a section that is shaped in groups beside single stitches may have a row more', () => {
    const bare = { ...front, parts: front.parts.filter((_, i) => i !== twin) };
    const both = changeWithTwins(bare, lead, (part) => ({
      ...part,
      sections: [
        {
          ...(part.sections[0] as PartForm['sections'][number]),
          rows: '8',
          shaping: partOf(front, lead).sections.flatMap(({ shaping }) => shaping),
        },
      ],
    }));
    const kinds = partOf(both, lead).sections[0]?.shaping.map(({ kind }) => kind);
    expect(new Set(kinds)).toEqual(new Set(['edge', 'bind off']));
    const mirrored = mirrorPart(both, lead, 'Other side');
    const image = mirrored.parts.findIndex(({ name }) => name === 'Other side');
    const rowsMore = (rows: number): PieceForm => ({
      ...mirrored,
      parts: mirrored.parts.map((part, i) =>
        i === image
          ? {
              ...part,
              sections: part.sections.map((one) => ({ ...one, rows: String(Number(one.rows) + rows) })),
            }
          : part,
      ),
    });
    expect([0, 1, 2].map((rows) => twinOf(rowsMore(rows), image))).toEqual([lead, lead, undefined]);
  });

  it('is none of what lies between the two, however alike', () => {
    const middle = (name: string): PartForm => ({
      ...partOf(front, lead),
      name,
      start: { kind: 'split', part: partOf(front, 0).name, stitches: '8', edge: 'middle' },
      sections: [],
    });
    const form = { ...front, parts: [partOf(front, 0), middle('one'), middle('two')] };
    expect(twinOf(form, 2)).toBeUndefined();
  });

  it('does not follow a part that begins anew on a cast-on of its own', () => {
    const own = changeWithTwins(front, lead, (part) => ({
      ...part,
      start: { kind: 'cast on', stitches: '12' },
    }));
    expect(partOf(own, twin)).toBe(partOf(front, twin));
  });
});
