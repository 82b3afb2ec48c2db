import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Design } from '../../src/knit/garment/design.ts';
import { type Draft, draft } from '../../src/knit/garment/draft.ts';
import { armholeKinds } from '../../src/knit/garment/kinds/armholes.ts';
import { neckShapes } from '../../src/knit/garment/kinds/necks.ts';
import { sleeveShapes } from '../../src/knit/garment/kinds/sleeve-shapes.ts';
import { type Drawing, drawingOf } from '../../src/screens/draft/place-figures.ts';
import { edgeAt } from '../../src/screens/draft/schematic.tsx';
import { lengthToType, saysLength, saysTyped } from '../../src/words/measures.ts';
import { plainSpeech, speech } from '../../src/words/settings.ts';
import { byTurns } from '../by-turns.ts';
import { designs } from '../knit/garment/designs.ts';
import { even } from '../knit/garment/spelled.ts';

beforeAll(() => {
  speech.value = { ...plainSpeech, units: 'cm' };
});
afterAll(() => {
  speech.value = plainSpeech;
});

/** The designs of the drafting’s own tests, and every neck, armhole and sleeve with every other. */
const wished: readonly (readonly [string, Design])[] = [
  ...Object.entries(designs).map(([name, design]) => [name, { ...even, ...design }] as const),
  ...armholeKinds.flatMap((armhole) =>
    neckShapes.flatMap((neck) =>
      sleeveShapes.map((sleeve) => {
        const shaped = { ...even, armhole, neck: { ...even.neck, shape: neck } };
        return [
          `${armhole}, ${neck}, ${sleeve}`,
          { ...shaped, sleeve: { ...even.sleeve, shape: sleeve } },
        ] as const;
      }),
    ),
  ),
];

const drafts: readonly (readonly [string, Draft])[] = wished.flatMap(([name, design]) => {
  const made = draft({ ...design, ease: { ...design.ease, chest: design.ease.chest + 7 } });
  return made.ok ? [[name, made.value] as const] : [];
});

/** px of the drawing's column and of a letter: phones, a tablet, twice the text. */
const rooms = [288, 358, 380, 560].flatMap((width) =>
  [16, 20.8, 32].flatMap((em) => [0, 2].map((apart) => ({ width, em, apart }))),
);

/** A draft laid into a third of the rooms, another one for each, once for all that is asked of it. */
function laidOut(made: Draft): readonly (Drawing & { readonly room: (typeof rooms)[number] })[] {
  const turn = drafts.findIndex(([, one]) => one === made);
  const known = layouts.get(made) ?? byTurns(rooms, turn).map((room) => ({ ...drawingOf(made, room), room }));
  layouts.set(made, known);
  return known;
}

const layouts = new WeakMap<Draft, ReturnType<typeof laidOut>>();

/** px; WCAG 2.2, success criteria 2.5.5 and 2.5.8 */
const TARGET = 44;
const LEAST = 24;

describe('a draft’s drawing', () => {
  it('is tried with most of what can be drafted', () => {
    expect(drafts.length).toBeGreaterThan(50);
  });

  it('says what was asked for where it reads as another figure, and only there', () => {
    const seen = { same: 0, other: 0 };
    for (const [, made] of drafts)
      for (const { measure, made: text, asked } of drawingOf(made, { width: 358, em: 16 }).figures) {
        const rounding = made.roundings.find((one) => one.measure === measure);
        const [wish, got] = [saysLength(rounding?.askedMm ?? 0), saysLength(rounding?.madeMm ?? 0)];
        expect(text.replace(/^[↔↕] /, '')).toBe(got);
        // as in the table below and in its field
        expect(asked).toBe(wish === got ? undefined : `(${saysTyped(lengthToType(rounding?.askedMm ?? 0))})`);
        seen[asked === undefined ? 'same' : 'other'] += 1;
      }
    expect(Math.min(seen.same, seen.other)).toBeGreaterThan(10);
  });

  it.each(drafts)(
    'of %s: figures have a finger’s room each, within the drawing, at every width and size of letters',
    (_, made) => {
      const faults: unknown[] = [];
      for (const { figures, width, height, room } of laidOut(made)) {
        for (const [i, one] of figures.entries()) {
          const isApart = (other: typeof one) =>
            Math.abs(one.x - other.x) >= (one.wide + other.wide) / 2 ||
            Math.abs(one.y - other.y) >= (one.high + other.high) / 2;
          const isWithin =
            one.x - one.wide / 2 >= -1 &&
            one.x + one.wide / 2 <= width + 1 &&
            one.y + one.high / 2 <= height + 1;
          const hasRoom = Math.min(one.wide, one.high) >= TARGET;
          if (!isWithin || !hasRoom || !figures.slice(i + 1).every(isApart)) faults.push({ room, one });
        }
      }
      expect(faults).toEqual([]);
    },
  );

  it('has a line’s room for each where lines are set wide (WCAG 2.2, success criterion 1.4.12: 1.5 of the letters)', () => {
    const SMALL = 0.9375 * 16;
    const lines = drafts.flatMap(([, made]) =>
      drawingOf(made, { width: 358, em: 16, apart: 2 }).figures.map(
        ({ asked, high }) => [asked ? 2 : 1, high] as const,
      ),
    );
    expect(lines.filter(([count]) => count === 2).length).toBeGreaterThan(10);
    expect(lines.filter(([count, high]) => high < count * 1.5 * SMALL)).toEqual([]);
  });

  it.each(drafts)('of %s: no figure hides an edge that it is not the measure of', (_, made) => {
    const faults: unknown[] = [];
    for (const { figures, garment, put, letters, room } of laidOut(made)) {
      for (const { to, x, y, made: text, asked } of figures) {
        // no wider than its letters are, at half an em each
        const wide = Math.max(text.length, asked?.length ?? 0) * (0.5 * letters + room.apart);
        const high = (asked ? 2 : 1) * letters;
        for (const { name, line } of garment.edges) {
          if (measureOf[to]?.includes(name)) continue;
          const hidden = along(line.map(put)).filter(
            ([px, py]) => Math.abs(px - x) < wide / 2 && Math.abs(py - y) < high / 2,
          );
          if (hidden.length > 16) faults.push({ room, to, name, px: hidden.length });
        }
      }
    }
    expect(faults).toEqual([]);
  });

  it.each(drafts)('of %s: the length, the chest, the neck and the sleeve are told on a phone', (_, made) => {
    for (const units of ['cm', 'in'] as const) {
      speech.value = { ...plainSpeech, units };
      const told = drawingOf(made, { width: 358, em: 16 }).figures.map(({ to }) => to);
      const wanted = ['lengthMm', 'ease.chest', 'neck.widthMm'];
      if (made.roundings.some(({ measure }) => measure === 'neck depth')) wanted.push('neck.depthMm');
      if (made.outlines.some(({ piece }) => piece === 'Sleeve')) wanted.push('sleeve.lengthMm');
      expect(wanted.filter((one) => !told.includes(one))).toEqual([]);
    }
    speech.value = { ...plainSpeech, units: 'cm' };
  });

  it('tells the width of a closed body first, in a language of long units, on the smallest phone', () => {
    speech.value = { ...plainSpeech, language: 'de', units: 'in' };
    const without = drafts.flatMap(([name, made]) => {
      const told = drawingOf(made, { width: 292, em: 16 }).figures.map(({ to }) => to);
      return told.includes('ease.chest') ? [] : [name];
    });
    // half of a cardigan, between its band and its side, is narrower than the figure
    expect(without.filter((name) => !name.includes('cardigan'))).toEqual([]);
    speech.value = { ...plainSpeech, units: 'cm' };
  });

  it('has as many figures in larger letters, in a language of long units, on the smallest phone', () => {
    speech.value = { ...plainSpeech, language: 'de', units: 'in' };
    const fewer = drafts.flatMap(([name, made]) => {
      const [plain, larger] = [16, 20.8].map((em) => drawingOf(made, { width: 292, em }).figures.length) as [
        number,
        number,
      ];
      return larger < plain ? [`${name}: ${larger} of ${plain}`] : [];
    });
    expect(fewer).toEqual([]);
    // but no letters are made smaller than plain ones, nor by more than a quarter
    for (const [, made] of drafts) {
      expect(drawingOf(made, { width: 292, em: 16 }).letters).toBe(16);
      expect(drawingOf(made, { width: 358, em: 32 }).letters).toBeGreaterThanOrEqual(24);
    }
    speech.value = { ...plainSpeech, units: 'cm' };
  });

  it('is whole where it has little height', () => {
    for (const [, made] of drafts) {
      const { height } = drawingOf(made, { width: 396, em: 16, low: 262 });
      expect(height).toBeLessThanOrEqual(262.5);
    }
  });

  // each draft on one of the two phones, the next one on the other
  it.each(byTurns(drafts, 0, 2))(
    'of %s: every edge has a square of 44 px in which a finger means it',
    (_, made) => {
      const drawing = drawingOf(made, { width: 358, em: 16 });
      expect(namesOf(drawing)).toEqual(expect.arrayContaining(['neck', 'armhole', 'side', 'hem']));
      expect(edgesWithout(drawing, TARGET)).toEqual([]);
    },
  );

  it.each(byTurns(drafts, 1, 2))(
    'of %s: every edge has a square of 24 px on the smallest phone',
    (_, made) => {
      expect(edgesWithout(drawingOf(made, { width: 288, em: 16 }), LEAST)).toEqual([]);
    },
  );
});

/** The edges that a figure is the measure of, by hand. */
const measureOf: Readonly<Record<string, readonly string[]>> = {
  lengthMm: ['side'],
  'ease.chest': ['side'],
  'neck.widthMm': ['neck'],
  'neck.depthMm': ['neck', 'band'],
  'sleeve.lengthMm': ['sleeve'],
  'ease.wrist': ['sleeve'],
  'ease.armholeDepth': ['armhole'],
};

/** A point at each px of a line. */
const along = (line: readonly (readonly [number, number])[]): (readonly [number, number])[] =>
  line.slice(1).flatMap(([x1, y1], i) => {
    const [x0, y0] = line[i] ?? [x1, y1];
    const long = Math.round(Math.hypot(x1 - x0, y1 - y0));
    return Array.from(
      { length: long },
      (_, n) => [x0 + ((x1 - x0) * n) / long, y0 + ((y1 - y0) * n) / long] as const,
    );
  });

const namesOf = ({ garment }: Drawing) => [...new Set(garment.edges.map(({ name }) => name))];

/** The edges that have no such square (px), by the edge that each point of the drawing means: eight points make a side. */
function edgesWithout(drawing: Drawing, target: number): readonly string[] {
  const { width, height, figures, garment, put } = drawing;
  const step = target / 8;
  const edges = garment.edges.map(({ name, line }) => ({ name, line: line.map(put) }));
  const placed = { garment: { ...garment, edges }, put: (point: readonly [number, number]) => point };
  const found = new Set<string>();
  // the edge that each point means, and the side of the largest square of it that ends there
  let above: readonly (readonly [name: string | undefined, side: number])[] = [];
  for (let y = 0; y < height + target / 2; y += step) {
    const row: (readonly [string | undefined, number])[] = [];
    for (let x = 0; x < width; x += step) {
      const isCovered = figures.some(
        (one) => Math.abs(x - one.x) < one.wide / 2 && Math.abs(y - one.y) < one.high / 2,
      );
      const name = isCovered ? undefined : edgeAt([x, y], placed);
      const [i, before] = [row.length, row.at(-1)];
      const least = [above[i], above[i - 1], before].map((one) => (one?.[0] === name ? (one?.[1] ?? 0) : 0));
      const side = name === undefined ? 0 : Math.min(...least) + 1;
      row.push([name, side]);
      if (name !== undefined && side * step >= target) found.add(name);
    }
    above = row;
  }
  return namesOf(drawing).filter((name) => !found.has(name));
}
