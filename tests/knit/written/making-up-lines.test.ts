import { expect, it } from 'vitest';
import { easeOf, type MakingUpStep } from '../../../src/knit/making-up/step.ts';
import { englishJoining } from '../../../src/knit/written/english-joining.ts';
import { makingUpLines } from '../../../src/knit/written/making-up-lines.ts';

const said = (step: MakingUpStep) => makingUpLines(step, englishJoining('UK'), (mm) => `${mm} mm`).join(' ');

it('a raglan that opens is sewn up to its opening, in the written pattern too', () => {
  const lines = said({
    id: 'raglan',
    kind: 'raglan',
    sleeve: 'Sleeve',
    seams: 4,
    rows: easeOf(56, 56),
    asFarAsOpening: easeOf(36, 36),
    underarm: { stitches: 0, rows: 0 },
  });
  expect(lines).toMatch(/Sew raglan seams: three lines, .*: 56 rows to 56 rows/);
  expect(lines).toContain('only up to its opening: 36 rows');
});

it('shoulders that lie over each other say which is on top, and are sewn at the armhole alone', () => {
  const lap = (of: 'left shoulder' | 'both shoulders' | 'placket', buttons?: number) =>
    said({ id: 'lap', kind: 'lap', of, rows: 7, ...(buttons && { buttons }) });
  expect(lap('left shoulder', 2)).toMatch(/front shoulder .* over the back .* armhole only.* 2 buttons/);
  expect(lap('both shoulders')).toMatch(
    /the back with its band, 7 rows, over the front.* armhole only.* measured once, on the upper layer/,
  );
  expect(lap('placket')).toMatch(/over the other, 7 rows each.* lower end .* below it/);
  for (const of of ['left shoulder', 'both shoulders', 'placket'] as const)
    expect(lap(of)).not.toMatch(/the both|sew down the ends/);
});

it('a live shoulder that is closed after the band is worked with three needles or grafted, not sewn', () => {
  const close = (how: 'three-needle' | 'grafted' | 'sewn') =>
    said({
      id: 'close Neckband',
      kind: 'close',
      band: 'Neckband',
      rows: 6,
      seam: { of: 'shoulder', line: 'left back', both: easeOf(33, 33), how },
    });
  expect(close('three-needle')).toMatch(
    /left shoulder seam: 33 stitches .* casting off both edges together with a third needle/,
  );
  expect(close('grafted')).toContain('by grafting');
  expect(close('sewn')).toContain('Join the left shoulder seam: 33 stitches');
});

/** What a leaflet says of each step, with the figures of a garment that was reckoned on paper: common practice, no published source. */
it.each<readonly [string, MakingUpStep, readonly string[]]>([
  [
    'blocking',
    { id: 'a', kind: 'block', piece: 'Sleeve', makes: 2, widthMm: 320, heightMm: 440 },
    ['sleeve', '2', '320 mm wide, 440 mm high'],
  ],
  [
    'both shoulders',
    {
      id: 'a',
      kind: 'shoulders',
      back: 'Back',
      front: 'Front',
      stitches: easeOf(30, 30),
      seams: 2,
      how: 'mattress',
    },
    ['both shoulder', '30 stitches to 30 stitches.', 'in mattress stitch'],
  ],
  [
    'one shoulder, beside one that is buttoned',
    {
      id: 'a',
      kind: 'shoulders',
      back: 'Back',
      front: 'Front',
      stitches: easeOf(30, 30),
      seams: 1,
      side: 'right',
      how: 'sewn',
      isOtherButtoned: true,
    },
    ['right shoulder', '30 stitches to 30 stitches.', 'flat', 'The left shoulder is buttoned, not sewn.'],
  ],
  [
    'sides that differ by two rows in sixty',
    { id: 'a', kind: 'side seams', back: 'Back', front: 'Front', rows: easeOf(62, 60) },
    ['side seams', '62 rows to 60 rows, one more of the longer edge after every 30.'],
  ],
  ['the seam of a sleeve', { id: 'a', kind: 'sleeve seams', sleeve: 'Sleeve', rows: 96 }, ['sleeve seams']],
  [
    'a sleeve that is set in, its underarm bound off',
    {
      id: 'a',
      kind: 'set in sleeves',
      sleeve: 'Sleeve',
      topMm: 430,
      armholeMm: 410,
      markerRows: 0,
      markerMm: 0,
      on: 'Back',
      marksMm: [],
      quarters: [20, 40],
      underarm: { stitches: 8, rows: 0 },
    },
    [
      'At the underarm sew 8 cast off stitches to those of the sleeve.',
      'rows 20, then 40',
      'edge is 430 mm, the armhole 410 mm; ease the longer one in evenly',
    ],
  ],
  [
    'a straight sleeve in an indented armhole',
    {
      id: 'a',
      kind: 'set in sleeves',
      sleeve: 'Sleeve',
      topMm: 410,
      armholeMm: 410,
      markerRows: 54,
      markerMm: 205,
      on: 'Back',
      marksMm: [],
      quarters: [],
      underarm: { stitches: 8, rows: 10 },
    },
    ['sew 8 cast off stitches to the 10 topmost rows of the sleeve’s side'],
  ],
  [
    'buttons opposite the holes of the other band',
    { id: 'a', kind: 'buttons', band: 'Right band', stitches: [4, 20, 36], on: 'Left band' },
    [
      'The holes of the right band lie 4, then 20, then 36 stitches above its lower end.',
      'to the left band, opposite the holes',
    ],
  ],
  [
    'buttons of a band that goes round both fronts',
    { id: 'a', kind: 'buttons', band: 'Front band', stitches: [4, 20] },
    [
      'The holes of the front band lie 4, then 20 stitches above its lower end.',
      'to the other band, opposite the holes',
    ],
  ],
  [
    'an opening at the back',
    { id: 'a', kind: 'opening', of: 'back', rows: 24 },
    ['opening of the back', '24 rows deep, with a button on one side and a loop on the other'],
  ],
  [
    'a raglan’s opening',
    { id: 'a', kind: 'opening', of: 'raglan', rows: 12 },
    [
      'opening of the raglan',
      '12 rows deep',
      'a button on the edge of the back',
      'a loop on that of the sleeve',
    ],
  ],
  [
    'a raglan of which one line waits for the band',
    {
      id: 'a',
      kind: 'raglan',
      sleeve: 'Sleeve',
      seams: 3,
      waits: 'left back',
      rows: easeOf(56, 56),
      underarm: { stitches: 6, rows: 0 },
    },
    ['raglan seams', 'three lines', '56 rows to 56 rows', 'left back one stays open', '6 cast off stitches'],
  ],
  [
    'a raglan of four lines',
    {
      id: 'a',
      kind: 'raglan',
      sleeve: 'Sleeve',
      seams: 4,
      rows: easeOf(56, 56),
      underarm: { stitches: 0, rows: 0 },
    },
    ['raglan seams', 'all four lines'],
  ],
  [
    'a band that is picked up',
    { id: 'a', kind: 'pick up', band: 'Neckband', edges: [], ratio: { stitches: 3, rows: 4 }, total: 104 },
    ['neckband', '104 stitches in all', '3 of 4 along rows'],
  ],
  [
    'a neck without a band',
    {
      id: 'a',
      kind: 'neck edge',
      edges: [
        { along: 'side of neck', times: 2, rows: 40, ratio: { stitches: 3, rows: 4 }, stitches: 30 },
        { along: 'back neck', times: 1, rows: undefined, ratio: undefined, stitches: 36 },
      ],
      total: 96,
    },
    [
      '30 along each side of the neck, 3 of 4 along its 40 rows',
      '36 along the back neck, one for each stitch',
      'about 96 stitches in all',
    ],
  ],
  ['the ends', { id: 'a', kind: 'ends' }, ['ends along the seams']],
])('of %s', (_, step, wanted) => {
  const lines = said(step).toLowerCase();
  for (const one of wanted) expect(lines).toContain(one.toLowerCase());
});
