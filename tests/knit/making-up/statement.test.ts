import { describe, expect, it } from 'vitest';
import type { EdgeName, SewnBand } from '../../../src/knit/making-up/band-joints.ts';
import type { Sewn } from '../../../src/knit/making-up/sewn.ts';
import { stated } from '../../../src/knit/making-up/statement.ts';
import type { PieceRole } from '../../../src/knit/piece/recipe.ts';
import { jointSaid, panel, sleeve } from './sewn-by-name.ts';

/*
 * What is sewn to what, in its order; common practice, no published source. The wearer's left is at the right edge of a
 * front that lies with its right side up, and at the left edge of a back; a left sleeve has its right edge behind.
 */
const fronts = { left: panel('front', 5), right: panel('front', 5) };
const halves = (underarm: number) => ({
  left: panel('left front', underarm),
  right: panel('right front', underarm),
});
const sleeves = (underarm: number) => ({
  left: sleeve('left sleeve', underarm),
  right: sleeve('right sleeve', underarm),
});
const band = (
  piece: string,
  role: PieceRole,
  makes: number,
  ...along: readonly (EdgeName | undefined)[]
): SewnBand => ({
  piece,
  part: piece,
  role,
  makes,
  along: along.map((edge, i) => ({ edge, stitches: i + 1 })),
});

const made = (sewn: Partial<Sewn>): readonly string[] =>
  stated({
    bands: [],
    isRaglan: false,
    isIndented: false,
    isOpen: false,
    isFlatFront: false,
    shoulders: 'mattress',
    capEase: 0,
    ...sewn,
  }).map(jointSaid);

const neckband = band(
  'Neckband',
  'neckband',
  1,
  'left front neck',
  'middle of the front neck',
  'right front neck',
  'back neck',
);
const setIn = (whole: string) => [
  `armhole: left sleeve right cap${whole}, left sleeve top, left sleeve left cap${whole} turned = back left armhole${whole}, front right armhole${whole} turned`,
  `armhole: right sleeve right cap${whole}, right sleeve top, right sleeve left cap${whole} turned = front left armhole${whole}, back right armhole${whole} turned`,
];
const sides = ['side: front right side = back left side', 'side: front left side = back right side'];
const openSides = [
  'side: left front right side = back left side',
  'side: right front left side = back right side',
];
const ownSeams = [
  'sleeve: left sleeve right seam = left sleeve left seam',
  'sleeve: right sleeve right seam = right sleeve left seam',
];
const hems = ['free hem: back hem', 'free hem: front hem'];
const openHems = ['free hem: back hem', 'free hem: left front hem', 'free hem: right front hem'];
const cuffs = ['free cuff: left sleeve cuff', 'free cuff: right sleeve cuff'];
const freeNeck = [
  'free neck: front neck of right turned',
  'free neck: front middle',
  'free neck: front neck of left',
  'free neck: back neck',
];
const back = panel('back', 5);

describe('the making up of', () => {
  it('a pullover with set-in sleeves: its left shoulder waits for the neckband', () => {
    const [left, right] = setIn('');
    expect(
      made({ back, fronts, sleeves: sleeves(5), bands: [neckband], capEase: 4, shoulders: 'grafted' }),
    ).toEqual([
      'shoulder: front left shoulder = back right shoulder grafted',
      'pick up Neckband 1: 1 front neck of right turned | 2 front middle | 3 front neck of left | 4 back neck',
      'shoulder: front right shoulder = back left shoulder grafted',
      'band: Neckband = Neckband left',
      `${left} ease 4`,
      'underarm: left sleeve right underarm = back left underarm',
      'underarm: left sleeve left underarm = front right underarm',
      `${right} ease 4`,
      'underarm: right sleeve right underarm = front left underarm',
      'underarm: right sleeve left underarm = back right underarm',
      ...sides,
      ...ownSeams,
      ...hems,
      ...cuffs,
      'free neck: Neckband top',
    ]);
  });

  /** The seams of the neck and its band, in their order. */
  const aboutNeck = (edges: readonly EdgeName[], isRaglan = false) =>
    made({
      back,
      fronts,
      sleeves: sleeves(0),
      bands: [band('Neckband', 'neckband', 1, ...edges)],
      isRaglan,
    })
      .flatMap(
        (line) =>
          /^(?:shoulder|raglan|pick up|band)[^:]*: (?:(.*?) shoulder|.* = (.*) armhole)?/.exec(line) ?? [],
      )
      .filter((said) => said !== undefined && !said.includes('=') && said !== '')
      .map((said) => (said.startsWith('pick up') ? 'band' : said));
  const front = ['left front neck', 'middle of the front neck', 'right front neck'] as const;

  it.each([
    // common practice: the ends of the band meet at a seam, which waits for them
    ['the left shoulder', [...front, 'back neck'], ['front left', 'band', 'front right']],
    ['the right shoulder', ['back neck', ...front], ['front right', 'band', 'front left']],
    [
      'the right shoulder where the back rests on a holder',
      ['right back neck', 'middle of the back neck', 'left back neck', ...front],
      ['front right', 'band', 'front left'],
    ],
    [
      'none: its ends meet at the middle of the front',
      ['right front neck', 'back neck', 'left front neck'],
      ['front left', 'front right', 'band'],
    ],
  ] as const)('a neckband that is begun at %s', (_, edges, order) => {
    expect(aboutNeck(edges).filter((said) => /^(?:front (?:left|right)|band)$/.test(said))).toEqual(order);
  });

  const [leftFront, rightFront, rightBack, leftBack] = [
    'front right',
    'front left',
    'back right',
    'back left',
  ];
  it.each([
    [
      'left back',
      ['left sleeve top', ...front, 'right sleeve top', 'back neck'],
      [leftFront, rightFront, rightBack, 'band', leftBack],
    ],
    [
      'right back',
      ['back neck', 'left sleeve top', ...front, 'right sleeve top'],
      [leftFront, rightFront, leftBack, 'band', rightBack],
    ],
    [
      'left front',
      [...front, 'right sleeve top', 'back neck', 'left sleeve top'],
      [rightFront, rightBack, leftBack, 'band', leftFront],
    ],
    [
      'right front',
      ['right sleeve top', 'back neck', 'left sleeve top', ...front],
      [leftFront, rightBack, leftBack, 'band', rightFront],
    ],
  ] as const)('a raglan whose band is begun at the %s line: that one waits', (_, edges, order) => {
    const said = aboutNeck(edges, true).filter((one) => /^(?:(?:front|back) (?:left|right)|band)$/.test(one));
    expect(said).toEqual(order);
  });

  const shoulders = [
    'shoulder: front left shoulder = back right shoulder',
    'shoulder: front right shoulder = back left shoulder',
  ];
  it('one without a band: both shoulders at once, and a neck that is left free', () => {
    const whole = [...shoulders, ...setIn(' whole'), ...sides, ...ownSeams, ...hems, ...cuffs, ...freeNeck];
    // the sleeve has another number bound off than the body: cap and armhole are sewn with what is bound off
    expect(made({ back, fronts, sleeves: sleeves(4) })).toEqual(whole);
    // and so where the sleeve's sides go into the body's corner
    expect(made({ back, fronts, sleeves: sleeves(5), isIndented: true })).toEqual(whole);
    expect(made({ back, fronts, sleeves: sleeves(0) })).toEqual(whole);
  });

  const raglan = (whole: string) => [
    `raglan: left sleeve left cap${whole} = front right armhole${whole}`,
    `raglan: right sleeve right cap${whole} = front left armhole${whole}`,
    `raglan: right sleeve left cap${whole} = back right armhole${whole}`,
    `raglan: left sleeve right cap${whole} = back left armhole${whole}`,
  ];
  it('a raglan: the left line at the back waits for the neckband', () => {
    const [one, two, three, four] = raglan('');
    expect(made({ back, fronts, sleeves: sleeves(5), bands: [neckband], isRaglan: true })).toEqual([
      one,
      'underarm: left sleeve left underarm = front right underarm',
      two,
      'underarm: right sleeve right underarm = front left underarm',
      three,
      'underarm: right sleeve left underarm = back right underarm',
      'pick up Neckband 1: 1 front neck of right with tip turned | 2 front middle | 3 front neck of left with tip | 4 back neck',
      four,
      'underarm: left sleeve right underarm = back left underarm',
      'band: Neckband = Neckband left',
      ...sides,
      ...ownSeams,
      ...hems,
      ...cuffs,
      'free neck: left sleeve top',
      'free neck: right sleeve top',
      'free neck: Neckband top',
    ]);
  });

  it('a raglan that opens: the left line at the back is sewn up to its opening, the other three to their tops', () => {
    const raglanOpening = {
      back: { sewn: { first: 1, last: 40 }, open: { first: 41, last: 56 } },
      sleeve: { sewn: { first: 1, last: 38 }, open: { first: 39, last: 54 } },
    };
    const lines = made({
      back: panel('back', 0),
      fronts: { left: panel('front', 0), right: panel('front', 0) },
      sleeves: sleeves(0),
      bands: [neckband],
      isRaglan: true,
      raglanOpening,
    });
    const [one, two, three] = raglan(' whole');
    expect(lines.filter((line) => line.startsWith('raglan')).sort()).toEqual(
      [
        one,
        two,
        three,
        'raglan: left sleeve right cap whole rows 1 to 38 = back left armhole whole rows 1 to 40',
      ].sort(),
    );
    expect(lines.filter((line) => /^free opening.*(armhole|cap)/.test(line))).toEqual([
      'free opening: back left armhole whole rows 41 to 56',
      'free opening: left sleeve right cap whole rows 39 to 54',
    ]);
  });

  it('a raglan cardigan: nothing waits, its neckband does not go round', () => {
    const along = [
      'right front neck',
      'right sleeve top',
      'back neck',
      'left sleeve top',
      'left front neck',
    ] as const;
    const bands = [band('Neckband', 'neckband', 1, ...along)];
    expect(
      made({
        back: panel('back', 0),
        fronts: halves(0),
        sleeves: sleeves(0),
        bands,
        isRaglan: true,
        isOpen: true,
      }),
    ).toEqual([
      ...raglan(' whole').map((line) =>
        line.replace('front right', 'left front right').replace('front left', 'right front left'),
      ),
      'pick up Neckband 1: 1 right front neck of left with tip | 2 right sleeve top | 3 back neck | 4 left sleeve top | 5 left front neck of right with tip turned',
      ...openSides,
      ...ownSeams,
      ...openHems,
      ...cuffs,
      'free front: left front opening of right turned',
      'free front: right front opening of left',
      'free neck: Neckband top',
      'free front: Neckband',
      'free front: Neckband left',
    ]);
  });

  it('a cardigan with front bands: they go on along the sides of the neckband', () => {
    const bands = [
      band('Neckband', 'neckband', 1, 'right front neck', 'back neck', 'left front neck'),
      band('Buttons', 'front band', 1, 'left front edge'),
      band('Holes', 'front band', 1, 'right front edge'),
    ];
    const all = made({ back, fronts: halves(5), bands, isOpen: true });
    expect(all).toEqual([
      'shoulder: right front left shoulder = back right shoulder',
      'shoulder: left front right shoulder = back left shoulder',
      'pick up Neckband 1: 1 right front neck of left | 2 back neck | 3 left front neck of right turned',
      'pick up Buttons 1: 1 Neckband left turned, left front opening of right turned',
      'pick up Holes 1: 1 right front opening of left, Neckband',
      ...openSides,
      ...openHems,
      'free armhole: left front right armhole whole',
      'free armhole: back left armhole whole turned',
      'free armhole: right front left armhole whole turned',
      'free armhole: back right armhole whole',
      'free neck: Neckband top',
      ...['Buttons', 'Holes'].flatMap((name) => [
        `free front: ${name} top`,
        `free front: ${name}`,
        `free front: ${name} left`,
      ]),
    ]);
    const without = made({ back, fronts: halves(5), bands: bands.slice(1), isOpen: true });
    expect(without).toContain('pick up Buttons 1: 1 left front opening of right turned');
    expect(without).toContain('pick up Holes 1: 1 right front opening of left');
  });

  it('a vest: its second armhole band begins at the back, and both are closed', () => {
    const along = ['left front armhole', undefined, 'left back armhole'] as const;
    const bands = [
      band('Neckband', 'neckband', 1, 'front neck', 'back neck'),
      band('Armhole band', 'armhole band', 2, ...along),
    ];
    expect(made({ back, fronts, bands, isFlatFront: true })).toEqual([
      shoulders[0],
      'pick up Neckband 1: 1 front neck | 2 back neck',
      shoulders[1],
      'band: Neckband = Neckband left',
      'pick up Armhole band 1: 1 front right armhole whole | 2  | 3 back left armhole whole turned',
      'pick up Armhole band 2: 3 back right armhole whole | 2  | 1 front left armhole whole turned',
      ...sides,
      'band: Armhole band = Armhole band left',
      'band: Armhole band of 2 = Armhole band left of 2',
      ...hems,
      'free neck: Neckband top',
      'free armhole: Armhole band top',
      'free armhole: Armhole band top of 2',
    ]);
  });

  it('what there is, where pieces are missing', () => {
    expect(made({ fronts, sleeves: sleeves(5) })).toEqual([
      ...ownSeams,
      'free hem: front hem',
      ...cuffs,
      ...freeNeck.slice(0, 3),
    ]);
    expect(made({ back })).toEqual([
      'free hem: back hem',
      'free neck: back neck',
      'free armhole: back left armhole whole turned',
      'free armhole: back right armhole whole',
    ]);
    // a neckband of a back alone is picked up, but goes round nothing
    const alone = made({ back, bands: [neckband] });
    expect(alone).toContain('free neck: Neckband top');
    expect(alone.filter((line) => line.startsWith('band'))).toEqual([]);
    expect(
      made({ back, sleeves: sleeves(5), isRaglan: true }).filter((line) => line.startsWith('raglan')),
    ).toEqual(raglan('').slice(2));
    expect(made({})).toEqual([]);
  });
});
