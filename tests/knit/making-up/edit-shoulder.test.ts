import { describe, expect, it } from 'vitest';
import { type ShoulderFrom, withShoulder } from '../../../src/knit/making-up/edit-shoulder.ts';
import type {
  Edge,
  PartRecipe,
  PieceRole,
  Recipe,
  Section,
  Shaping,
} from '../../../src/knit/piece/recipe.ts';

/*
 * How a panel is made wider or narrower at its shoulders, counted on paper. A piece is told by what each of its parts begins
 * with, what is bound off at each edge in groups, and the rows of its decreases.
 */

const groups = (edge: Edge, ...sizes: readonly (readonly [row: number, stitches: number])[]): Shaping => ({
  kind: 'bind off',
  edge,
  groups: sizes.map(([row, stitches]) => ({ row, stitches })),
});

const decreases = (edge: Edge, rows: readonly number[], by = -1): Shaping => ({
  kind: 'edge',
  edge,
  by,
  rows,
  inset: 1,
  lean: 'mirrored',
});

const section = (shaping: readonly Shaping[] = [], rows = 12): Section => ({
  name: 'section',
  rows,
  fabric: 'stocking',
  needle: 4,
  shaping,
});

const part = (name: string, from: PartRecipe['from'], ...sections: readonly Section[]): PartRecipe => ({
  name,
  from,
  sections,
  end: 'bind off',
});

const taken = (stitches: number, edge: 'right' | 'middle' | 'left') => ({ part: 'body', stitches, edge });

const piece = (parts: readonly PartRecipe[], role: PieceRole = 'back', makes = 1): Recipe => ({
  name: 'Piece',
  makes,
  role,
  parts,
});

function told(recipe: Recipe | undefined): readonly string[] | undefined {
  return recipe?.parts.map(({ from, sections }) => {
    const begins = 'castOn' in from ? from.castOn : 'part' in from ? from.stitches : 0;
    const shaped = sections.flatMap(({ shaping }) =>
      shaping.map((one) =>
        one.kind === 'bind off'
          ? `${one.edge} ${one.groups.map(({ stitches }) => stitches).join('+')}`
          : one.kind === 'edge'
            ? `${one.edge} at ${one.rows.join(' ')}`
            : one.kind,
      ),
    );
    return [begins, ...shaped].join(', ');
  });
}

const wider = (recipe: Recipe, edges: readonly Edge[], by: number, from: ShoulderFrom = 'neck') =>
  told(withShoulder(recipe, edges, by, from));

const both = ['left', 'right'] as const;

describe('a panel whose neck rests between two shoulders', () => {
  const back = piece([
    part('body', { castOn: 60 }, section()),
    part('right shoulder', taken(20, 'right'), section()),
    part('neck', taken(20, 'middle')),
    part('left shoulder', taken(20, 'left'), section()),
  ]);

  it('gives its shoulders from the middle what they need, and takes back what they have too much', () => {
    expect(wider(back, both, 2)).toEqual(['60', '22', '16', '22']);
    expect(wider(back, ['right'], 3)).toEqual(['60', '23', '17', '20']);
    expect(wider(back, ['left'], -5)).toEqual(['60', '20', '25', '15']);
  });

  it('keeps one stitch of the middle, and one of a shoulder', () => {
    expect(wider(back, ['left'], 19)).toEqual(['60', '20', '1', '39']);
    expect(wider(back, ['left'], 20)).toBeUndefined();
    expect(wider(back, both, 10)).toBeUndefined();
    expect(wider(back, ['left'], -19)).toEqual(['60', '20', '39', '1']);
    expect(wider(back, ['left'], -20)).toBeUndefined();
  });

  it('is cast on with as many more for both, its neck as it was', () => {
    expect(wider(back, both, 2, 'cast-on')).toEqual(['64', '22', '20', '22']);
    expect(wider(back, both, -3, 'cast-on')).toEqual(['54', '17', '20', '17']);
    // one shoulder alone would lie askew on its body
    expect(wider(back, ['right'], 2, 'cast-on')).toBeUndefined();
  });
});

describe('a shoulder that is bound off in groups', () => {
  const back = (right: Shaping, left: Shaping) =>
    piece([
      part('body', { castOn: 60 }, section()),
      part('right shoulder', taken(20, 'right'), section([right], 5)),
      part('neck', taken(20, 'middle')),
      part('left shoulder', taken(20, 'left'), section([left], 6)),
    ]);
  const whole = back(groups('right', [1, 7], [3, 7], [5, 6]), groups('left', [2, 7], [4, 7], [6, 6]));

  it('has the difference in its last group where no stitch is left after them', () => {
    expect(wider(whole, both, 2)).toEqual(['60', '22, right 7+7+8', '16', '22, left 7+7+8']);
    expect(wider(whole, both, -5)).toEqual(['60', '15, right 7+7+1', '30', '15, left 7+7+1']);
  });

  it('needs a stitch in it', () => {
    expect(wider(whole, both, -6)).toBeUndefined();
  });

  it('has it behind its groups where stitches are left for the last row', () => {
    const rest = back(groups('right', [1, 7], [3, 7]), groups('left', [2, 7], [4, 7]));
    expect(wider(rest, both, 2)).toEqual(['60', '22, right 7+7', '16', '22, left 7+7']);
    // of the 6 that were left one fewer than none cannot be bound off there
    expect(wider(rest, both, -5)).toEqual(['60', '15, right 7+7', '30', '15, left 7+7']);
    expect(wider(rest, both, -6)).toEqual(['60', '14, right 7+1', '32', '14, left 7+1']);
  });
});

describe('a panel whose left side begins with the middle of its neck', () => {
  const back = piece([
    part('body', { castOn: 60 }, section()),
    part('right side', taken(20, 'right'), section()),
    part('left side', taken(40, 'left'), section([groups('right', [1, 20])])),
  ]);

  it('binds off fewer there for a wider left shoulder', () => {
    expect(wider(back, ['left'], 2)).toEqual(['60', '20', '40, right 18']);
  });

  it('gives a wider right one as many of the middle’s stitches', () => {
    expect(wider(back, ['right'], 2)).toEqual(['60', '22', '38, right 18']);
    expect(wider(back, both, 2)).toEqual(['60', '22', '38, right 16']);
  });

  it('binds off two of the middle at the least: else its sides are as they are', () => {
    expect(wider(back, ['left'], 18)).toEqual(['60', '20', '40, right 2']);
    expect(wider(back, ['left'], 19)).toBeUndefined();
  });

  it('takes no group for the middle that is bound off further up', () => {
    const later = (row: number, before: readonly Section[] = []) =>
      piece([
        part('body', { castOn: 60 }, section()),
        part('right side', taken(20, 'right'), section()),
        part('left side', taken(40, 'left'), ...before, section([groups('right', [row, 20])])),
      ]);
    expect(wider(later(2), ['right'], 2)).toEqual(['60', '22', '38, right 18']);
    // its own neck has nothing bound off or decreased
    expect(wider(later(3), ['right'], 2)).toBeUndefined();
    expect(wider(later(1, [section()]), ['right'], 2)).toBeUndefined();
    expect(wider(later(3), ['left'], 2)).toEqual(['60', '20', '40, right 18']);
  });
});

describe('half a front', () => {
  const half = (shaping: readonly Shaping[], role: PieceRole = 'left front', makes = 1) =>
    piece([part('front', { castOn: 40 }, section(), section(shaping))], role, makes);

  it('binds off fewer for its neck first, as long as two are left of that group', () => {
    const front = half([groups('left', [2, 6], [4, 3])]);
    expect(wider(front, ['right'], 2)).toEqual(['40, left 4+3']);
    expect(wider(front, ['right'], 4)).toEqual(['40, left 2+3']);
    expect(wider(front, ['right'], 5)).toBeUndefined();
    expect(wider(front, ['right'], -2)).toEqual(['40, left 8+3']);
  });

  it('decreases less often along its neck where nothing is bound off there', () => {
    const front = half([decreases('left', [1, 3, 5, 7, 9])]);
    // of five decreases three: over the same rows, two or four apart
    const laid = withShoulder(front, ['right'], 2, 'neck')?.parts[0]?.sections[1]?.shaping[0];
    expect(laid?.kind === 'edge' && laid.rows).toHaveLength(3);
    expect(laid?.kind === 'edge' && laid.rows[0]).toBe(1);
    expect(wider(front, ['right'], 4)).toEqual(['40, left at 1']);
    // a neck without any is no neck
    expect(wider(front, ['right'], 5)).toBeUndefined();
    // more than every row of one side has room for
    expect(wider(front, ['right'], -2)).toBeUndefined();
    expect(wider(front, ['right'], -1)).toEqual(['40, left at 1 3 5 7 9 11']);
  });

  it('takes of several slants the one with most decreases, and none at its armhole or by two at once', () => {
    const front = half([
      decreases('right', [1, 3, 5, 7, 9]),
      decreases('left', [2, 4]),
      decreases('left', [6, 8, 10]),
      decreases('left', [1, 3, 5, 7], -2),
    ]);
    const made = wider(front, ['right'], 2)?.[0]?.split(', ');
    expect(made?.slice(0, 3)).toEqual(['40', 'right at 1 3 5 7 9', 'left at 2 4']);
    expect(made?.[3]).toBe('left at 6');
    expect(made?.[4]).toBe('left at 1 3 5 7');
  });

  it('is cast on with as many more where its one shoulder is wider, whichever front it is', () => {
    for (const [role, makes] of [
      ['left front', 1],
      ['right front', 1],
      ['front', 2],
    ] as const)
      expect(wider(half([], role, makes), ['right'], 3, 'cast-on')).toEqual(['43']);
    expect(wider(half([]), both, 3, 'cast-on')).toBeUndefined();
    // a front that is knitted once is a whole one
    expect(wider(half([], 'front'), ['right'], 3, 'cast-on')).toBeUndefined();
    expect(wider(half([], 'front'), both, 3, 'cast-on')).toEqual(['46']);
  });
});

describe('a panel in one piece', () => {
  it('has no shoulder that its neck could give anything', () => {
    const whole = piece([part('body', { castOn: 60 }, section([decreases('right', [1, 3])]))]);
    expect(wider(whole, ['left'], 2)).toBeUndefined();
    expect(
      wider(piece([part('body', { castOn: 60 }), part('flap', { castOn: 5 })]), ['left'], 2),
    ).toBeUndefined();
  });

  it('that is bound off in groups from both edges has what both need in the last of each', () => {
    const both12 = [groups('right', [1, 15], [3, 15]), groups('left', [2, 15], [4, 15])];
    const drop = piece([part('body', { castOn: 60 }, section(both12, 4))]);
    expect(wider(drop, both, 2, 'cast-on')).toEqual(['64, right 15+17, left 15+17']);
  });
});

describe('a shoulder whose neck is bound off above it', () => {
  it('has the difference in the last group at its own edge', () => {
    const right = groups('right', [1, 7], [3, 7], [5, 4]);
    const neck = groups('left', [1, 2]);
    const panel = piece([
      part('body', { castOn: 60 }, section()),
      part(
        'right shoulder',
        taken(20, 'right'),
        section([decreases('right', [2])]),
        section([right]),
        section([neck]),
      ),
      part('neck', taken(20, 'middle')),
      part('left shoulder', taken(20, 'left'), section([groups('left', [2, 20])])),
    ]);
    const made = withShoulder(panel, ['right'], 2, 'neck')?.parts[1];
    expect(made?.from).toEqual(taken(22, 'right'));
    expect(made?.sections.map(({ shaping }) => shaping[0])).toEqual([
      decreases('right', [2]),
      groups('right', [1, 7], [3, 7], [5, 6]),
      neck,
    ]);
  });
});

describe('a cast-on that becomes wider', () => {
  it('leaves all else of its recipe as it is', () => {
    const panel = {
      ...piece([
        part('body', { castOn: 60 }, section()),
        part('right shoulder', taken(20, 'right'), section()),
        part('neck', taken(20, 'middle')),
        part('left shoulder', taken(20, 'left'), section()),
      ]),
      gauge: { stitches: 20, rows: 28 },
      needle: 4,
    } as Recipe;
    const made = withShoulder(panel, ['right', 'left'], 2, 'cast-on');
    expect(made).toEqual({
      ...panel,
      parts: panel.parts.map((one) => ({
        ...one,
        from:
          'castOn' in one.from
            ? { castOn: 64 }
            : one.name === 'neck'
              ? one.from
              : { ...one.from, stitches: 22 },
      })),
    });
  });

  const ribbed = (castOn: number, fabric: Section['fabric']) =>
    piece([
      part('body', { castOn }, { ...section(), fabric }),
      part('right shoulder', taken(20, 'right')),
      part('neck', taken(20, 'middle')),
      part('left shoulder', taken(20, 'left')),
    ]);

  it('stays on the multiple of the rib that it begins with: four, and none or two over', () => {
    expect(wider(ribbed(60, 'rib 2x2'), both, 2, 'cast-on')?.[0]).toBe('64');
    expect(wider(ribbed(60, 'rib 2x2'), both, 1, 'cast-on')?.[0]).toBe('62');
    expect(wider(ribbed(61, 'stocking'), both, 1, 'cast-on')?.[0]).toBe('63');
  });

  it('is not that of what is picked up or goes on from another piece', () => {
    const band = piece([part('band', { pickUp: [{ along: 'neck', stitches: 60 }] }, section())]);
    expect(wider(band, both, 2, 'cast-on')).toBeUndefined();
  });
});
