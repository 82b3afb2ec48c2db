import { describe, expect, it } from 'vitest';
import type { Edit, Knitted } from '../../../src/knit/making-up/edit.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { type Asked, answers } from '../../../src/knit/making-up/mends.ts';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { dataSaid, part, piece, section, slant, standing, troubleSaid } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';
import { cardigan, cardiganBands, drop, raglan, raglanBand } from './shapes.ts';

/* Reckoned by hand: a stitch is 4 mm wide and a row 3 mm high; in rib 2 mm by 5 mm. */

/** The pieces, so many rows more in sections of them: `Back a 4`, of every part that has it. */
function longer(pieces: readonly Recipe[], ...changes: readonly string[]): readonly Recipe[] {
  return changes.reduce((made, change) => {
    const [name, called, by] = change.split(' ');
    return made.map((recipe) => ({
      ...recipe,
      parts: recipe.parts.map((one) => ({
        ...one,
        sections: one.sections.map((own) =>
          recipe.name === name && own.name === called ? { ...own, rows: own.rows + Number(by) } : own,
        ),
      })),
    }));
  }, pieces);
}

const editSaid = (edit: Edit): string => {
  switch (edit.kind) {
    case 'rows':
      return `${edit.piece} ${edit.makes.join('+')} ${edit.part} ${edit.section} ${edit.called} by ${edit.by}`;
    case 'width':
      return `${edit.piece} ${edit.part} wider by ${edit.by}`;
    case 'shoulder':
      return `${edit.piece} shoulder ${edit.edges.join('+')} by ${edit.by} from ${edit.from}`;
    case 'pick up':
      return `${edit.piece} ${edit.edges.map((one) => `${one.at} ${one.along} ${one.was} now ${one.now}`).join(', ')}`;
  }
};

/** What is told, the state of the other piece, and each mend in a line of its own. */
const said = (asked: Asked<StandingGarment>): readonly string[] =>
  [...answers(asked)].flatMap(({ what, other, mends }) => [
    `${what.map(dataSaid).join(' | ')}: ${other}`,
    ...mends.map(({ edits }) => `- ${edits.map(editSaid).join('; ')}`),
  ]);

const asked = (before: readonly Recipe[], after: readonly Recipe[]) => ({
  before: standing(...before),
  after: standing(...after),
});

/** Both state the joints that are proposed for the first. */
const stated = (before: readonly Recipe[], after: readonly Recipe[]) => {
  const [was, is] = [standing(...before), standing(...after)];
  const joints = proposed(was);
  return { before: { ...was, joints }, after: { ...is, joints } };
};

const pullover = [back, front, sleeve, neckband];
const banded = [...cardigan, ...cardiganBands];
const raglans = [...raglan, raglanBand];

const longerBack = 'kind seam of side unit rows piece Back to Front was 10 now 14 other 10 longerMm 12';
const knitted = (name: string, ...rows: readonly (readonly number[])[]): Knitted =>
  new Map([[name, { isBegun: true, rows }]]);

describe('what mends', () => {
  it.each([
    [
      'a back four rows longer: the front as many, in the same section',
      pullover,
      ['Back body 4'],
      [`${longerBack}: not begun`, '- Front 1 Body 1 body by 4'],
    ],
    [
      'a front four rows shorter: the back as many fewer',
      pullover,
      ['Front body -4'],
      [
        'kind seam of side unit rows piece Front to Back was 10 now 6 other 10 longerMm -12: not begun',
        '- Back 1 Back 1 body by -4',
      ],
    ],
    [
      'a neck 24 mm deeper on both sides: six and five stitches more, and one behind for the rib over a multiple of 4',
      pullover,
      ['Front neck 8'],
      [
        // the front is longer, too: with the back each armhole is 48 mm longer, which six rows of either side of a cap come near enough to
        'kind level of above the underarm piece Front to Back was 10 now 18 other 10 longerMm 24: not begun',
        '- Back 1 Back 2 armhole by 8; Sleeve 1+2 Sleeve 2 cap by 6',
        'kind pick up band Neckband along 0 stitches 5 fit 11 longerMm 24 | kind pick up band Neckband along 2 stitches 5 fit 10 longerMm 24: not begun',
        '- Neckband 0 left front neck 5 now 11, 2 right front neck 5 now 10, 3 back neck 8 now 9',
      ],
    ],
    [
      'fronts eight rows longer: each band as the length asks, 12 × 63 ÷ 39 = 19, and one more for the rib',
      banded,
      ['Front a 8'],
      [
        'kind seam of side unit rows piece Front to Back was 7 now 15 other 7 longerMm 24: not begun',
        '- Back 1 Back 0 a by 8',
        'kind pick up band Buttons along 0 stitches 12 fit 19 longerMm 24: not begun',
        '- Buttons 0 left front edge 12 now 20',
        'kind pick up band Holes along 0 stitches 12 fit 19 longerMm 24: not begun',
        '- Holes 0 right front edge 12 now 20',
      ],
    ],
    [
      'a back eight rows longer: both fronts, which bring their bands with them',
      banded,
      ['Back a 8'],
      [
        'kind seam of side unit rows piece Back to Front was 7 now 15 other 7 longerMm 24: not begun',
        '- Front 1+2 Front 0 a by 8; Buttons 0 left front edge 12 now 20; Holes 0 right front edge 12 now 20',
      ],
    ],
    [
      'a raglan’s back two rows longer: its sleeves, and for them both sides of the front',
      raglans,
      ['Back b 2'],
      [
        'kind seam of raglan unit rows piece Back to Sleeve was 8 now 10 other 8 longerMm 6: not begun',
        '- Sleeve 1+2 Sleeve 1 b by 2; Front 1 Right 0 b by 2; Front 1 Left 0 b by 2',
      ],
    ],
    [
      'a raglan’s sleeve two rows longer: both sides of the front, and the back, each for its own seams',
      raglans,
      ['Sleeve b 2'],
      [
        'kind seam of raglan unit rows piece Sleeve to Front was 8 now 10 other 8 longerMm 6: not begun',
        '- Front 1 Right 0 b by 2; Front 1 Left 0 b by 2',
        'kind seam of raglan unit rows piece Sleeve to Back was 8 now 10 other 8 longerMm 6: not begun',
        '- Back 1 Back 1 b by 2',
      ],
    ],
    ['nothing where nothing is broken', pullover, ['Back body 4', 'Front body 4'], []],
  ] as const)('%s', (_, before, changes, lines) => {
    expect(said(asked(before, longer(before, ...changes)))).toEqual(lines);
  });

  it('takes along what it would put further off: sleeves of 12 rows leave the back of 8 four rows behind, where it was two', () => {
    // front 8 + 2 + 2 rows at its raglan, sleeves 8 + 2, back 8
    const mends = said(asked(raglans, longer(raglans, 'Front b 2', 'Sleeve b 2')));
    expect(mends.filter((line) => line.startsWith('-'))).toEqual([
      '- Sleeve 1+2 Sleeve 1 b by 2; Back 1 Back 1 b by 4',
      '- Back 1 Back 1 b by 2',
    ]);
  });

  it('armholes 36 mm longer than their caps: six rows of 3 mm on either side of both', () => {
    expect(said(asked(pullover, longer(pullover, 'Back armhole 8', 'Front armhole 8')))).toEqual([
      'kind seam of armhole unit mm piece Back to Sleeve was 52.8 now 100.8 other 64.8 longerMm 36 | kind seam of armhole unit mm piece Front to Sleeve was 52.8 now 99.3 other 64.8 longerMm 34.5: not begun',
      '- Sleeve 1+2 Sleeve 2 cap by 6',
    ]);
  });

  it('each is whole: with it nothing is left of what it mends, and with all of them nothing at all', () => {
    for (const [before, change] of [
      [pullover, 'Back body 4'],
      [banded, 'Front a 8'],
      [banded, 'Back a 8'],
      [raglans, 'Sleeve b 2'],
      [raglans, 'Back b 2'],
    ] as const) {
      const first = asked(before, longer(before, change));
      let garment = first.after;
      for (let left = said(first).length; left > 0; ) {
        const [answer] = [...answers({ ...first, after: garment })];
        const [mend] = answer?.mends ?? [];
        if (!mend) throw new Error(`${change}: nothing mends ${(answer?.what ?? []).map(dataSaid).join()}`);
        garment = mend.garment;
        const still = said({ ...first, after: garment });
        expect(still.length).toBeLessThan(left);
        left = still.length;
      }
      expect(makingUpOf(garment).troubles.map(troubleSaid)).toEqual(
        makingUpOf(first.before).troubles.map(troubleSaid),
      );
    }
  });
});

describe('the piece in hand', () => {
  const both = asked(pullover, longer(pullover, 'Back body 4'));
  it.each([
    ['is what she changes', 'Back', '- Front 1 Body 1 body by 4'],
    ['stays as it is where the other was changed before', 'Front', '- Back 1 Back 1 body by -4'],
    ['is not asked where no seam of it is broken', 'Sleeve', '- Front 1 Body 1 body by 4'],
    ['may be none', undefined, '- Front 1 Body 1 body by 4'],
  ])('%s', (_, inHand, mend) => {
    expect(said({ ...both, inHand })).toEqual([`${longerBack}: not begun`, mend]);
  });

  it('does not keep its band from being changed, nor a band itself', () => {
    const neck = asked(pullover, longer(pullover, 'Front neck 8'));
    for (const inHand of ['Front', 'Neckband']) expect(said({ ...neck, inHand })).toHaveLength(4);
  });
});

describe('a piece that is on the needles', () => {
  const both = asked(pullover, longer(pullover, 'Back body 4'));
  const ofFront = both.after.pieces[1]?.makes[0]?.parts.map(({ rows }) => rows.length) ?? [];
  const mend = '- Front 1 Body 1 body by 4';

  it.each([
    [
      'not yet, though it is known',
      new Map([['Front', { isBegun: false, rows: [[14]] }]]),
      'not begun',
      [mend],
    ],
    ['five rows in', knitted('Front', [5]), 'begun', [mend]],
    ['past its body: it cannot follow', knitted('Front', [14, 1]), 'begun', []],
    [
      'all but the last row',
      knitted(
        'Front',
        ofFront.map((n, i) => n - (i === 3 ? 1 : 0)),
      ),
      'begun',
      [],
    ],
    ['to its last row', knitted('Front', ofFront), 'done', []],
    [
      'and more',
      knitted(
        'Front',
        ofFront.map((n) => n + 1),
      ),
      'done',
      [],
    ],
    ['the other is: this one is not', knitted('Sleeve', [1]), 'not begun', [mend]],
    ['the changed one is', knitted('Back', [2]), 'not begun', [mend]],
  ] as const)('%s', (_, so, other, mends) => {
    expect(said({ ...both, knitted: so as Knitted })).toEqual([`${longerBack}: ${other}`, ...mends]);
  });

  it('has rows of its own from there on', () => {
    const [answer] = [...answers({ ...both, knitted: knitted('Front', [5]) })];
    const made = answer?.mends[0]?.garment.pieces[1];
    expect(made?.recipe).toBe(both.after.pieces[1]?.recipe);
    expect(made?.makes[0]?.parts[0]?.rows).toHaveLength(18);
  });

  it('a band that is begun is told as such, and cannot be picked up anew', () => {
    const neck = asked(pullover, longer(pullover, 'Front neck 8'));
    for (const [rows, state] of [
      [1, 'begun'],
      [4, 'done'],
    ] as const) {
      const all = said({ ...neck, knitted: knitted('Neckband', [rows]) });
      const lines = all.filter((line) => !line.startsWith('-'));
      expect(lines.map((line) => line.slice(line.lastIndexOf(':')))).toEqual([': not begun', `: ${state}`]);
    }
  });

  it('of two sleeves one changed: the other follows, if it can', () => {
    const before = standing(...pullover);
    const long = standing(...longer(pullover, 'Sleeve sleeve 4'));
    const mixed = (one: number) => ({
      ...before,
      pieces: before.pieces.map((own, i) =>
        own.recipe.name === 'Sleeve'
          ? {
              ...own,
              makes: own.makes.map((make, n) => (n === one ? (long.pieces[i]?.makes[n] ?? make) : make)),
            }
          : own,
      ),
    });
    const pair = 'kind pair piece Sleeve was 10 now 14 other 10';
    // its rib is plain, and comes before the shaped section; with the rib knitted it is that one
    const line = (make: number) => `- Sleeve ${make} Sleeve 0 rib by 4`;
    expect(said({ before, after: mixed(0) })).toEqual([`${pair}: not begun`, line(2)]);
    expect(said({ before, after: mixed(1) })).toEqual([`${pair}: not begun`, line(1)]);
    expect(said({ before, after: mixed(1), inHand: 'Sleeve' })).toEqual([`${pair}: not begun`, line(1)]);
    expect(said({ before, after: mixed(0), knitted: knitted('Sleeve', [12], [12]) })).toEqual([
      `${pair}: begun`,
    ]);
    expect(said({ before, after: mixed(0), knitted: knitted('Sleeve', [12], [4]) })).toEqual([
      `${pair}: begun`,
      '- Sleeve 2 Sleeve 1 sleeve by 4',
    ]);
    expect(said({ before, after: mixed(0), knitted: knitted('Sleeve', [21], [17]) })).toEqual([
      `${pair}: done`,
    ]);
    expect(said({ before, after: mixed(0), knitted: knitted('Sleeve', [21], [16]) })).toEqual([
      `${pair}: begun`,
    ]);
  });
});

describe('by length, where the joints are stated', () => {
  const [rear, fore] = drop as [Recipe, Recipe, Recipe];
  const arm = (castOn: number, rows: number) =>
    piece('Sleeve', 'sleeve', [part('Sleeve', castOn, [section('a', rows, slant('both', 1, 3))])], {
      makes: 2,
    });
  const plain = [rear, fore, arm(8, 12)];

  it('a sleeve 20 mm narrower: six rows of 3 mm go of each armhole, at either side of the body', () => {
    const both = 'Back 1 Back 0 a by -6';
    const body = 'Front 1 Body 0 a by -6';
    expect(said(stated(plain, [rear, fore, arm(3, 12)]))).toEqual([
      'kind seam of armhole unit mm piece Sleeve to Back was 40 now 20 other 30 longerMm -10 | kind seam of armhole unit mm piece Sleeve to Front was 40 now 20 other 30 longerMm -10: not begun',
      `- ${both}; ${body}`,
    ]);
  });

  it('the front knitted already: nothing is shorter that is sewn to it', () => {
    const whole = stated(plain, [rear, fore, arm(3, 12)]);
    const rows = whole.after.pieces[1]?.makes[0]?.parts.map((one) => one.rows.length) ?? [];
    expect(said({ ...whole, knitted: knitted('Front', rows) })).toEqual([
      'kind seam of armhole unit mm piece Sleeve to Back was 40 now 20 other 30 longerMm -10 | kind seam of armhole unit mm piece Sleeve to Front was 40 now 20 other 30 longerMm -10: not begun',
    ]);
  });

  it.each([
    // beside the back, whose rows are told by their numbers, it is so much longer
    // 18 mm more on 30 are 48, and a quarter of it for the seam: 20 mm are five stitches of 4 mm, an even number is six
    ['six rows more', 6, 'was 30 now 48 other 40 longerMm 8', 'Sleeve Sleeve wider by 6'],
    // 24 mm more: 67.5 less 40 are seven
    ['eight rows more', 8, 'was 30 now 54 other 40 longerMm 14', 'Sleeve Sleeve wider by 6'],
    // 30 mm more: 75 less 40 are nine
    ['ten rows more', 10, 'was 30 now 60 other 40 longerMm 20', 'Sleeve Sleeve wider by 8'],
  ])('a front with %s above its underarm: sleeves so much wider at their tops', (_, by, was, mend) => {
    expect(said(stated(plain, longer(plain, `Front b ${by}`)))).toEqual([
      `kind level of above the underarm piece Front to Back was 5 now ${5 + by} other 5 longerMm ${3 * by}: not begun`,
      `kind seam of armhole unit mm piece Front to Sleeve ${was}: not begun`,
      `- ${mend}`,
    ]);
  });

  it('with sleeves on the needles, or too short for so many increases: nothing', () => {
    const wider = stated(plain, longer(plain, 'Front b 6'));
    const lines = said({ ...wider, knitted: knitted('Sleeve', [2], [0]) });
    expect(lines.map((line) => line.slice(line.lastIndexOf(':')))).toEqual([': not begun', ': begun']);
    const short = [rear, fore, arm(8, 6)];
    expect(said(stated(short, longer(short, 'Front b 6')))).toHaveLength(2);
  });

  it('with the sleeves in hand it is the front that goes back, both of its sides', () => {
    const wider = stated(plain, longer(plain, 'Front b 6'));
    const lines = said({ ...wider, inHand: 'Sleeve' });
    expect(lines.find((line) => line.startsWith('-'))).toBe(
      '- Front 1 Right 0 b by -6; Front 1 Left 0 b by -6',
    );
  });
});

describe('shoulders, stitch to stitch', () => {
  /** A back of the same parts as the front: each shoulder has 6 stitches, 3 bound off in a group and 3 at its end. */
  const rear: Recipe = {
    ...front,
    name: 'Back',
    role: 'back',
    parts: front.parts.map((one) => ({
      ...one,
      name: one.name === 'Body' ? 'Back' : one.name,
      from: 'part' in one.from ? { ...one.from, part: 'Back' } : one.from,
    })),
  };
  /** The front with so many stitches more at these shoulders, taken from the middle of its neck. */
  const wider = (by: number, ...names: readonly string[]): Recipe => ({
    ...front,
    parts: front.parts.map((one) => {
      if (!('part' in one.from)) return one;
      const more = one.name === 'Middle' ? -by * names.length : names.includes(one.name) ? by : 0;
      return { ...one, from: { ...one.from, stitches: one.from.stitches + more } };
    }),
  });
  // the left one of each is bound off a row later: 3 mm
  const told = (now: number, offMm = 3) =>
    `kind seam of shoulder unit stitches piece Front to Back was 6 now ${now} other 6 longerMm ${4 * (now - 6) + offMm}`;

  it.each([
    [1, 7],
    [-2, 4],
  ])('of a front %d wider each: those of the back too, its neck as much narrower', (by, now) => {
    expect(said(stated([rear, front], [rear, wider(by, 'Right', 'Left')]))).toEqual([
      `${told(now)}: not begun`,
      `- Back shoulder left+right by ${by} from neck`,
    ]);
  });

  it('one alone: that of the back which it is sewn to', () => {
    // as worn the left one lies at the right edge of a front and at the left edge of a back
    expect(said(stated([rear, front], [rear, wider(1, 'Right')]))).toEqual([
      `${told(7, -3)}: not begun`,
      '- Back shoulder left by 1 from neck',
    ]);
  });

  it('nothing where the back is on the needles, or its neck has no stitches to give', () => {
    const two = stated([rear, front], [rear, wider(1, 'Right', 'Left')]);
    expect(said({ ...two, knitted: knitted('Back', [2], [0], [0], [0]) })).toEqual([`${told(7)}: begun`]);
  });
});

describe('one side of a panel that is higher than the other', () => {
  const higher: Recipe = {
    ...front,
    parts: front.parts.map((one) =>
      one.name === 'Right'
        ? {
            ...one,
            sections: one.sections.map((own) => (own.name === 'neck' ? { ...own, rows: own.rows + 4 } : own)),
          }
        : one,
    ),
  };
  const two = asked([back, front], [back, higher]);

  it('the other side as high, and the back, which has no sides of its own', () => {
    expect(said({ ...two, inHand: 'Front' }).filter((line) => line.startsWith('-'))).toEqual([
      '- Front 1 Left 0 neck by 4; Back 1 Back 2 armhole by 4',
    ]);
  });

  it('not of a piece on the needles: its new plan is that of the one side', () => {
    const begun = { ...two, inHand: 'Front', knitted: knitted('Front', [2], [0], [0], [0]) };
    expect(said(begun).filter((line) => line.startsWith('-'))).toEqual([]);
  });
});
