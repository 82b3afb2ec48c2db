import { describe, expect, it } from 'vitest';
import type { PartRecipe, Section } from '../../../../src/knit/piece/recipe.ts';
import { regauge } from '../../../../src/knit/piece/regauge/regauge.ts';
import { expandRow } from '../../../../src/knit/row/expand.ts';
import type { Step } from '../../../../src/knit/row/step.ts';

/*
 * A band of 27 stitches in single rib, picked up on the wrong side: three rows, then holes of three stitches at 4, 12 and
 * 20 from its right edge. In twice as many stitches it has 55, 27 being odd, and its holes seven, three being odd.
 */

const rib = (rows: number, words?: Section['words']): Section => ({
  name: 'band',
  rows,
  fabric: 'rib 1x1 matched',
  needle: 4,
  shaping: [],
  ...(words ? { words } : {}),
});
const steps = (text: string): Step[] =>
  text.split(' ').map((one) => ({
    work: one.replace(/\d+/, '') as 'k' | 'p' | 'bo' | 'co' | 'sl',
    times: Number(/\d+/.exec(one)),
  }));
const ribbed = (first: 'k' | 'p', times: number): string =>
  Array.from({ length: times }, (_, i) => ((i % 2 === 0) === (first === 'k') ? 'k1' : 'p1')).join(' ');
const HOLES = [
  steps(`${ribbed('k', 4)} bo3 ${ribbed('p', 5)} bo3 ${ribbed('p', 5)} bo3 ${ribbed('p', 4)}`),
  steps(`${ribbed('p', 4)} co3 ${ribbed('k', 5)} co3 ${ribbed('k', 5)} co3 ${ribbed('k', 4)}`),
];

function again(from: PartRecipe['from'], sections: readonly Section[], stitches = 2, rows = 1) {
  const made = regauge(
    {
      name: 'Band',
      makes: 1,
      gauge: { stitches: 20, rows: 20 },
      parts: [{ name: 'band', from, sections, end: 'bind off', firstSide: 'WS' }],
    },
    { stitches: 20 * stitches, rows: 20 * rows },
  );
  return made.ok ? made.value.parts[0] : made.faults.map(({ code }) => code);
}

const along = { pickUp: [{ along: 'front edge', stitches: 27 }] };

/** Where a row binds off or casts on, in stitches of its own beginning, and how many at once. */
function placesOf(row: readonly Step[] = [], work: 'bo' | 'co', before: number): string {
  const works = expandRow(row, before);
  const places = works.flatMap((one, i) => (one === work && works[i - 1] !== work ? [i] : []));
  return places.map((at) => `${at}:${works.slice(at).findIndex((one) => one !== work)}`).join(' ');
}

describe('button holes of a band in twice as many stitches', () => {
  const made = again(along, [rib(3), rib(2, HOLES), rib(4)]);
  const part = made && 'sections' in made ? made : undefined;
  const words = part?.sections[1]?.words ?? [];

  it('lie twice as far from its edges, on knit stitches, and are cast on where they were bound off', () => {
    expect(part?.from).toEqual({ pickUp: [{ along: 'front edge', stitches: 55 }] });
    // seven bound off at 8, at 40, and at 24 between them; on the way back 8 and 17 lie between the holes
    expect(placesOf(words[0], 'bo', 55)).toBe('8:7 24:7 40:7');
    expect(placesOf(words[1], 'co', 34)).toBe('8:7 24:7 40:7');
  });

  it('are worked in the rib on either side of them', () => {
    expect(
      expandRow(words[0] ?? [], 55)
        .slice(0, 9)
        .join(' '),
    ).toBe('k p k p k p k p bo');
    expect(
      expandRow(words[1] ?? [], 34)
        .slice(0, 9)
        .join(' '),
    ).toBe('p k p k p k p k co');
  });
});

describe('rows in words are told, since they cannot be laid anew,', () => {
  it.each<[string, PartRecipe['from'], readonly Section[]]>([
    ['in a band that is cast on', { castOn: 27 }, [rib(3), rib(2, HOLES), rib(4)]],
    ['where the holes come on the wrong side', along, [rib(4), rib(2, HOLES), rib(4)]],
    [
      'where they are no holes',
      along,
      [rib(3), rib(2, [steps(ribbed('k', 27)), steps(ribbed('p', 27))]), rib(4)],
    ],
    [
      'where a stitch is slipped beside the holes',
      along,
      [rib(3), rib(2, [steps('sl1 k3 bo3 k20'), steps('k20 co3 k4')]), rib(4)],
    ],
  ])('%s', (_, from, sections) => {
    expect(again(from, sections)).toEqual(['rows in words']);
  });

  it('where the holes have no room any more: of 13 stitches three holes of three leave none between them', () => {
    expect(again(along, [rib(3), rib(2, HOLES), rib(4)], 0.4)).toEqual(['rows in words']);
  });
});

it('two rows of holes stay two, whatever becomes of the rows beside them', () => {
  // three rows become 1.2, as odd as they were one; four become 1.6, as even two
  const made = again(along, [rib(3), rib(2, HOLES), rib(4)], 1, 0.4);
  expect(Array.isArray(made) ? made : made?.sections.map(({ rows }) => rows)).toEqual([1, 2, 2]);
});
