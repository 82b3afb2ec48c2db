import { describe, expect, it } from 'vitest';
import { easeOf, type MakingUpStep } from '../../../src/knit/making-up/step.ts';
import type { Terms } from '../../../src/knit/row/row-words.ts';
import { englishJoining } from '../../../src/knit/written/english-joining.ts';
import { makingUpLines } from '../../../src/knit/written/making-up-lines.ts';

/*
 * Every sentence of the making up as it stands in the pattern, word by word, with figures that were reckoned on paper: common
 * practice, no published source.
 */
type Kind = MakingUpStep['kind'];
type Of<K extends Kind> = Omit<Extract<MakingUpStep, { kind: K }>, 'id'>;

const says = <K extends Kind>(step: Of<K>, lines: readonly string[], terms: Terms = 'US') =>
  expect(
    makingUpLines(
      { id: 'a', ...step } as unknown as MakingUpStep,
      englishJoining(terms),
      (mm) => `${mm / 10} cm`,
    ),
  ).toEqual(lines);

const mattress = 'Sew in mattress stitch.';
const none = { stitches: 0, rows: 0 };

describe('the making up is written:', () => {
  it('blocking, once or several times, and of which makes', () => {
    const block: Of<'block'> = { kind: 'block', piece: 'Left Front', makes: 1, widthMm: 320, heightMm: 440 };
    says<'block'>(block, ['Block left front: 32 cm wide, 44 cm high.']);
    says<'block'>({ ...block, makes: 2 }, ['Block left front, 2 times: 32 cm wide, 44 cm high.']);
    says<'block'>({ ...block, makes: 2, nos: [1, 3] }, [
      'Block left front, 2 times, no. 1, 3: 32 cm wide, 44 cm high.',
    ]);
  });

  it('shoulders, both or one', () => {
    const both: Of<'shoulders'> = {
      kind: 'shoulders',
      back: 'Back',
      front: 'Front',
      stitches: easeOf(30, 30),
      seams: 2,
      how: 'mattress',
    };
    says<'shoulders'>(both, ['Join both shoulder seams: 30 stitches to 30 stitches.', mattress]);
    says<'shoulders'>({ ...both, how: 'three-needle' }, [
      'Join both shoulder seams: 30 stitches to 30 stitches.',
      'Seam by binding off both edges together with a third needle, right sides together.',
    ]);
    says<'shoulders'>(
      { ...both, how: 'three-needle' },
      [
        'Join both shoulder seams: 30 stitches to 30 stitches.',
        'Seam by casting off both edges together with a third needle, right sides together.',
      ],
      'UK',
    );
    const one = { ...both, seams: 1, stitches: easeOf(30, 28), how: 'sewn' as const };
    const eased = '30 stitches to 28 stitches, one more of the longer edge after every 14.';
    says<'shoulders'>(one, [
      `Join the right shoulder seam: ${eased}`,
      'Sew edge to edge, flat.',
      'The left shoulder stays open until the band is done.',
    ]);
    says<'shoulders'>({ ...one, side: 'left' }, [
      `Join the left shoulder seam: ${eased}`,
      'Sew edge to edge, flat.',
      'The right shoulder stays open until the band is done.',
    ]);
    says<'shoulders'>({ ...one, side: 'right', isOtherButtoned: true, how: 'grafted' }, [
      `Join the right shoulder seam: ${eased}`,
      'Seam by grafting the edges together.',
      'The left shoulder is buttoned, not sewn.',
    ]);
    says<'shoulders'>({ ...one, nos: [2] }, [
      `Join the right shoulder seam, no. 2: ${eased}`,
      'Sew edge to edge, flat.',
    ]);
  });

  it('a band that is picked up', () => {
    says<'pick up'>(
      {
        kind: 'pick up',
        band: 'Neckband',
        edges: [],
        ratio: { stitches: 3, rows: 4 },
        percent: 88,
        total: 104,
      },
      [
        'Work the neckband as given above: 104 stitches in all.',
        'Allow 3 of 4 along rows.',
        'Allow 88 for each 100 stitches that the edge has room for.',
      ],
    );
  });

  it('a band that is closed, after the seam that waited for it', () => {
    const close: Of<'close'> = { kind: 'close', band: 'Neckband', rows: 8, seam: undefined };
    const ends = 'Sew the ends of the neckband together: 8 rows to 8 rows.';
    says<'close'>(close, [ends]);
    const both = easeOf(40, 40);
    says<'close'>({ ...close, seam: { of: 'shoulder', line: 'left back', both } }, [
      'Join the left shoulder seam: 40 stitches to 40 stitches.',
      'Sew edge to edge, flat.',
      ends,
    ]);
    says<'close'>({ ...close, seam: { of: 'shoulder', line: 'right back', both, how: 'grafted' } }, [
      'Join the right shoulder seam: 40 stitches to 40 stitches.',
      'Seam by grafting the edges together.',
      ends,
    ]);
    says<'close'>({ ...close, seam: { of: 'raglan', line: 'right front', both } }, [
      'Sew the right front raglan seam: 40 rows to 40 rows.',
      mattress,
      ends,
    ]);
  });

  it('a neck without a band, edge by edge', () => {
    const ratio = { stitches: 3, rows: 4 };
    const side = { along: 'side of neck', times: 2, rows: 40, ratio, stitches: 30 } as const;
    says<'neck edge'>(
      {
        kind: 'neck edge',
        edges: [
          side,
          { ...side, along: 'front neck', stitches: 18 },
          { along: 'back neck', times: 1, rows: undefined, ratio: undefined, stitches: 36 },
          { ...side, rows: undefined },
          { ...side, ratio: undefined },
        ],
        total: 96,
      },
      [
        'Allow 30 along each side of the neck, 3 of 4 along its 40 rows.',
        'Allow 18 along the front neck, one for each stitch.',
        'Allow 36 along the back neck, one for each stitch.',
        'Allow 30 along the side of neck, one for each stitch.',
        'Allow 30 along the side of neck, one for each stitch.',
        'Allow about 96 stitches in all for a band.',
        'Leave one shoulder open until the band is done.',
      ],
    );
  });

  it('the lines of a raglan', () => {
    const lines: Of<'raglan'> = {
      kind: 'raglan',
      sleeve: 'Sleeve',
      seams: 4,
      rows: easeOf(56, 56),
      underarm: none,
    };
    const upTo = 'from the underarm up to the neck: 56 rows to 56 rows.';
    says<'raglan'>(lines, [`Sew raglan seams: all four lines, ${upTo}`, mattress]);
    says<'raglan'>({ ...lines, nos: [2] }, [
      `Sew raglan seams, no. 2: the lines of this sleeve, ${upTo}`,
      mattress,
    ]);
    says<'raglan'>({ ...lines, seams: 3, waits: 'left back', underarm: { stitches: 6, rows: 0 } }, [
      `Sew raglan seams: three lines, ${upTo}`,
      mattress,
      'The left back one stays open until the band is done.',
      'At the underarm sew 6 bound off stitches to those of the sleeve.',
    ]);
    says<'raglan'>({ ...lines, asFarAsOpening: easeOf(36, 34) }, [
      `Sew raglan seams: three lines, ${upTo}`,
      'Sew the left back one only up to its opening: 36 rows to 34 rows, one more of the longer edge after every 17.',
      mattress,
    ]);
  });

  it('sleeves that are set in', () => {
    const sleeves: Of<'set in sleeves'> = {
      kind: 'set in sleeves',
      sleeve: 'Sleeve',
      topMm: 430,
      armholeMm: 410,
      markerRows: 54,
      markerMm: 205,
      on: 'Back',
      marksMm: [],
      quarters: [20, 40],
      underarm: none,
    };
    const pinned = [
      'Pin the middle of the top to the shoulder seam.',
      'Pin the quarter points, from the underarm up: rows 20, then 40.',
    ];
    says<'set in sleeves'>(sleeves, [
      'Set in sleeves: mark side edges 54 rows (20.5 cm) below the shoulder seam, and set in between the markers.',
      ...pinned,
      'The sleeve’s edge is 43 cm, the armhole 41 cm; ease the longer one in evenly.',
    ]);
    const corner = {
      ...sleeves,
      topMm: 420,
      quarters: [20, 30, 40],
      underarm: { stitches: 8, rows: 10 },
    };
    const set = [
      'Set in sleeves: pin the middle of the top to the shoulder seam.',
      'Pin the quarter points, from the underarm up: rows 20, then 30, then 40.',
    ];
    const meet = 'The sleeve’s edge is 42 cm, the armhole 41 cm.';
    says<'set in sleeves'>(corner, [
      ...set,
      'At the underarm sew 8 bound off stitches to the 10 topmost rows of the sleeve’s side.',
      meet,
    ]);
    says<'set in sleeves'>(
      { ...corner, underarm: { stitches: 8, rows: 0 } },
      [...set, 'At the underarm sew 8 cast off stitches to those of the sleeve.', meet],
      'UK',
    );
  });

  it('seams along rows', () => {
    const inset = [mattress, 'Sew one whole stitch in from each edge.'];
    const side: Of<'side seams'> = { kind: 'side seams', back: 'Back', front: 'Front', rows: easeOf(62, 60) };
    says<'side seams'>(side, [
      'Sew side seams: 62 rows to 60 rows, one more of the longer edge after every 30.',
      ...inset,
    ]);
    says<'side seams'>({ ...side, rows: easeOf(60, 30) }, [
      'Sew side seams: 60 rows to 30 rows: these do not match.',
      ...inset,
    ]);
    says<'sleeve seams'>({ kind: 'sleeve seams', sleeve: 'Sleeve', rows: 96 }, [
      'Sew sleeve seams: 96 rows to 96 rows.',
      ...inset,
    ]);
  });

  it('openings, and what lies over each other', () => {
    const head = 'Try it over the head first.';
    says<'opening'>({ kind: 'opening', of: 'back', rows: 24 }, [
      'Close the opening of the back: 24 rows deep, with a button on one side and a loop on the other.',
      head,
    ]);
    says<'opening'>({ kind: 'opening', of: 'raglan', rows: 12 }, [
      'Close the opening of the raglan: 12 rows deep, with a button on the edge of the back and a loop on that of the sleeve.',
      head,
    ]);
    const left =
      'Lay the left front shoulder with its band, 7 rows, over the back one. Sew the two layers together at the armhole only.';
    says<'lap'>({ kind: 'lap', of: 'left shoulder', rows: 7 }, [
      left,
      'Sew 1 button to the back below the holes.',
      head,
    ]);
    says<'lap'>({ kind: 'lap', of: 'left shoulder', rows: 7, buttons: 2 }, [
      left,
      'Sew 2 buttons to the back below the holes.',
      head,
    ]);
    says<'lap'>({ kind: 'lap', of: 'both shoulders', rows: 6 }, [
      'Lay the back with its band, 6 rows, over the front, and the front’s band under the back: the edges of both shoulders meet. Sew the layers together at each armhole only; the sleeve is sewn through both, and its armhole measured once, on the upper layer.',
      'Try it over the head before the sleeves are sewn in.',
    ]);
    for (const [terms, off] of [
      ['US', 'bound off'],
      ['UK', 'cast off'],
    ] as const)
      says<'lap'>(
        { kind: 'lap', of: 'placket', rows: 8, band: 'Left Band' },
        [
          `Lay the left band over the other, 8 rows each. Sew its lower end to the stitches ${off} below it, and the lower end of the other behind it.`,
          head,
        ],
        terms,
      );
  });

  it('buttons', () => {
    const buttons: Of<'buttons'> = { kind: 'buttons', band: 'Right Band', stitches: [4, 20, 36] };
    const holes =
      'Sew on buttons: the holes of the right band lie 4, then 20, then 36 stitches above its lower end.';
    says<'buttons'>({ ...buttons, on: 'Left Band' }, [
      holes,
      'Sew the buttons to the left band, opposite the holes.',
    ]);
    says<'buttons'>(buttons, [holes, 'Sew the buttons to the other band, opposite the holes.']);
  });

  it('what she joined herself, and the ends', () => {
    const edge = (name: string, count: number, mm: number) => ({
      stretch: { piece: name, make: 1, part: name, edge: 'left' as const },
      count,
      mm,
    });
    const join: Of<'join'> = {
      kind: 'join',
      seam: 'own',
      how: 'grafted',
      unit: 'rows',
      edges: [edge('Back', 40, 300), edge('Sleeve', 42, 330)],
    };
    const grafted = 'Seam by grafting the edges together.';
    says<'join'>(join, [
      'Join back to sleeve: 40 rows to 42 rows, one more of the longer edge after every 20.',
      grafted,
    ]);
    says<'join'>({ ...join, unit: 'stitches' }, [
      'Join back to sleeve: 40 stitches to 42 stitches, one more of the longer edge after every 20.',
      grafted,
    ]);
    says<'join'>({ ...join, unit: 'mm' }, [
      'Join back to sleeve: 30 cm to 33 cm.',
      'Sew the longer one in evenly.',
      grafted,
    ]);
    for (const edges of [
      [undefined, edge('Sleeve', 42, 330)],
      [edge('Back', 40, 300), undefined],
    ] as const)
      says<'join'>({ ...join, edges }, ['Join by hand: one of its edges is there no more.']);
    says<'ends'>({ kind: 'ends' }, ['Weave in ends along the seams.']);
  });
});
