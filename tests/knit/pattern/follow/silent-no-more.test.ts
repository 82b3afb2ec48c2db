import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { rowsOf } from './rows-of.ts';

/** Lines with a mark, each with its codes; those that hang on another one with its number. */
const told = (...text: readonly string[]): readonly string[] =>
  readPattern(text.join('\n')).lines.flatMap(({ line, faults, follows }) => [
    ...faults.map(({ code, figures }) => `${line} ${code}${'name' in figures ? ` ${figures.name}` : ''}`),
    ...(follows === undefined ? [] : [`${line} from ${follows}`]),
  ]);

describe('a row that turns before its end, and then', () => {
  const turned = ['FRONT', 'Cast on 36 sts.', 'Knit 4 rows.', 'Next row: K14, turn.'];
  it.each([
    'Knit 3 rows.',
    'Work 3 rows.',
    'Work until piece measures 20 cm.',
    'Dec 1 st at beg of next row.',
    'Bind off 4 sts at beg of next row.',
    'Bind off.',
    'Change to 5 mm needles. Knit 3 rows.',
  ])('%s is parted, and the stitches behind it wait', (next) => {
    const [row] = rowsOf(...turned, next).slice(4);
    expect(row).toBe('RS k14 14');
    expect(told(...turned, next, 'BACK', 'Cast on 30 sts.')).toContain('4 stitches wait');
  });
  it.each(['Knit 1 row.', 'Work 1 row.', 'Next row: knit to end.', 'Row 2: K14.', 'Turn.'])(
    '%s is a short row that comes back',
    (next) => {
      expect(rowsOf(...turned, next)[4]).toBe('RS k14, turn 36');
      expect(told(...turned, next)).toEqual([]);
    },
  );
  it('is worked in the row itself where more stands behind the turn', () => {
    const row = 'Next row: K14, turn, k14.';
    expect(rowsOf(...turned.slice(0, 3), row, 'Knit 3 rows.').at(-1)).toMatch(/ 36$/);
  });
  it('nothing waits where the others are taken up', () => {
    const rest = ['Knit 3 rows. Bind off.', 'Rejoin yarn to rem 22 sts and knit 3 rows. Bind off.'];
    expect(told(...turned, ...rest)).toEqual([]);
    expect(rowsOf(...turned, ...rest).slice(-2)).toEqual(['RS knit 22', 'WS bind off all sts in pattern 0']);
  });
});

describe('yarn that is rejoined', () => {
  const begun = ['FRONT', 'Cast on 36 sts.', 'Knit 4 rows.'];
  it.each(['Rejoin yarn.', 'Rejoin yarn to rem sts.', 'With RS facing, rejoin yarn and knit 1 row.'])(
    'where nothing rests is told: %s',
    (line) => {
      expect(told(...begun, line)).toEqual(['4 nothing rests']);
    },
  );
  it('to a side that is just parted is its own', () => {
    const parted = 'Next row: K14, bind off 8 sts, k14.';
    expect(told(...begun, parted, 'Join a second ball of yarn to these sts and knit 2 rows.')).toEqual([]);
  });
});

describe('another piece up to a length, without a gauge,', () => {
  const end = ['Bind off 3 sts at beg of next 2 rows.', 'Work 6 rows.', 'Bind off.'];
  const back = (...lines: readonly string[]) => ['BACK', 'Cast on 30 sts.', ...lines, ...end];
  const front = (text: readonly string[], mm: string) =>
    rowsOf(...text, 'FRONT', `Work as for back until piece measures ${mm}.`).slice(rowsOf(...text).length);
  const moss = ['RS *k1, p1; repeat from * to end 30', 'WS *p1, k1; repeat from * to end 30'];
  const straight = ['RS knit 30', 'WS purl 30'];
  it('is worked up to the stretch in which so much is reached, and that goes on', () => {
    const one = back('Work 5 cm in moss st.', 'Work in st st until piece measures 28 cm.');
    expect(front(one, '12 cm')).toEqual([...moss, ...straight]);
    expect(front(one, '28 cm')).toEqual([...moss, ...straight]);
    expect(front(one, '4 cm')).toEqual(moss);
    expect(front(one, '5 cm')).toEqual(moss);
  });
  it('by stretches one on the other', () => {
    const two = back('Work 5 cm in moss st.', 'Work 20 cm in st st.');
    expect(front(two, '25 cm')).toEqual([...moss, ...straight]);
    expect(front(two, '26 cm').at(-1)).toMatch(/ 24$/);
  });
  it('and past all of them up to what no length says', () => {
    const one = back('Work 5 cm in moss st.', 'Work in st st until piece measures 28 cm.');
    expect(front(one, '30 cm').length).toBe(2 + 2 + 2 + 6 + 2);
  });
});

describe('a shaping on every row without an end', () => {
  const begun = ['BACK', 'Cast on 40 sts.', 'Knit 4 rows.'];
  it('is told', () => {
    expect(told(...begun, 'Dec 1 st at armhole edge every row.')).toEqual(['4 place not known']);
    expect(told(...begun, 'Dec 1 st at each end of every row.')).toEqual(['4 place not known']);
  });
  it('but not where it has one, or is one row', () => {
    expect(told(...begun, 'Dec 1 st at each end of next row.')).toEqual([]);
    expect(told(...begun, 'Dec 1 st at each end of every row 3 times.')).toEqual([]);
    expect(told(...begun, 'Dec 1 st at each end of every row until 30 sts rem.')).toEqual([]);
    expect(told(...begun, 'Dec 1 st at each end of every row. 30 sts.')).toEqual([]);
  });
});

describe('a fabric that nobody knows', () => {
  const begun = ['BACK', 'Cast on 40 sts.'];
  it('is told by its name, and its rows are worked', () => {
    const text = [...begun, 'Work in blackberry st for 6 rows.'];
    expect(told(...text)).toEqual(['3 fabric not known blackberry']);
    expect(rowsOf(...text)).toEqual(
      Array.from({ length: 3 }, () => ['RS', 'WS'])
        .flat()
        .map((side) => `${side} work in pattern 40`),
    );
  });
  it('and what goes on in it hangs on that line, until another one is worked', () => {
    expect(
      told(
        ...begun,
        'Work in blackberry st for 6 rows.',
        'Work 4 rows.',
        'Cont in pattern for 2 rows.',
        'Work 4 rows in st st.',
        'Bind off.',
      ),
    ).toEqual(['3 fabric not known blackberry', '4 from 3', '5 from 3']);
    expect(told(...begun, 'Work in blackberry st for 6 rows.', 'Bind off.')).toEqual([
      '3 fabric not known blackberry',
    ]);
  });
  it('rib is no other rib than that one', () => {
    const text = [
      ...begun,
      'Work in k1, p1 rib for 4 rows.',
      'Work in twisted rib for 2 rows.',
      'Cont in rib for 2 rows.',
    ];
    expect(told(...text)).toEqual(['4 fabric not known twisted rib', '5 from 4']);
    expect(rowsOf(...text).at(-1)).toBe('WS work in pattern 40');
    const lace = [
      ...begun,
      'Work in k1, p1 rib for 4 rows.',
      'Work in lace st for 2 rows.',
      'Cont in rib for 2 rows.',
    ];
    expect(rowsOf(...lace).at(-1)).toBe('WS *k1, p1; repeat from * to end 40');
  });
  it('nor is a rib of which nothing is said', () => {
    expect(told(...begun, 'Work in rib for 4 rows.')).toEqual(['3 fabric not known rib']);
  });
  it('nor a pattern that the text never gives', () => {
    expect(told(...begun, 'Work in pattern for 4 rows.')).toEqual(['3 fabric not known pattern']);
    expect(told(...begun, 'Knit 2 rows.', 'Work in pattern st for 4 rows.')).toEqual([
      '4 fabric not known pattern',
    ]);
    expect(told(...begun, 'Work in pattern for 4 rows.', 'Work in pattern st for 4 rows.')).toEqual([
      '3 fabric not known pattern',
      '4 from 3',
    ]);
  });
  it('is told where it lies between borders, which are kept', () => {
    const text = [...begun, 'Work in blackberry st, keeping 3 sts at each end in garter st, for 2 rows.'];
    expect(told(...text)).toEqual(['3 fabric not known blackberry']);
    expect(rowsOf(...text)[0]).toBe('RS k3, work in pattern to last 3 sts, k3 40');
  });
  it('but one that the text gives is known', () => {
    const lace = ['Fern lace', 'Row 1: *k2, p2; rep from * to end.', 'Row 2: purl.'];
    expect(told(...lace, ...begun, 'Work in fern lace pattern for 6 rows.')).toEqual([]);
    expect(told(...lace, ...begun, 'Work in pattern for 6 rows.')).toEqual([]);
  });
});

describe('what was passed over', () => {
  const begun = ['BACK', 'Cast on 36 sts.', 'Knit 2 rows.'];
  it.each([
    'On the 5th row change to 4 mm needles.',
    'When underarm measures same as underarm of back, shape armhole as before.',
    'Work remainder of front to correspond with back.',
    'Complete the rest to match the sample.',
  ])('is told: %s', (line) => {
    expect(told(...begun, line)).toEqual(['4 stitch or repeat expected']);
  });
  it.each(['Change to 4 mm needles.', 'On 4 mm needles work 2 rows.', 'Sew the pocket to match.'])(
    'but not: %s',
    (line) => {
      expect(told(...begun, line)).toEqual([]);
    },
  );
});

describe('a buttonhole in one sentence', () => {
  const begun = ['FRONT', 'Cast on 30 sts.', 'Knit 2 rows.'];
  const closed = ['RS k4, bind off 3 sts, knit to end 27', 'WS knit to last 4 sts, cast on 3 sts, k4 30'];
  it.each([
    'Next row: k4, bind off 3, k to end; next row cast on 3 over those bound off.',
    'Next row: k4, bind off 3, k to end, then on next row, cast on 3 sts over those bound off.',
    'Next row: k4, bind off 3, k to end; in the next row: cast on 3 sts over bound-off sts.',
  ])('is two rows: %s', (line) => {
    expect(told(...begun, 'Knit 2 rows.', line)).toEqual([]);
    const rows = rowsOf(...begun, 'Knit 2 rows.', line).slice(4);
    expect(
      rows.map((row) =>
        row.replace(/purl|p4/, (word) => (word === 'purl' ? 'knit' : 'k4')).replace('p4', 'k4'),
      ),
    ).toEqual(closed);
  });
  it('but what is cast on at an edge is none of it', () => {
    expect(rowsOf(...begun, 'Next row: k to end, cast on 3 sts.').slice(2)).toEqual([
      'RS knit to end, cast on 3 sts 33',
    ]);
  });
});

describe('without a gauge', () => {
  const sleeve = ['SLEEVE', 'Cast on 30 sts.'];
  it('a shaping up to a length is told, since nobody knows how often it is', () => {
    const line = 'Work in st st, inc 1 st at each end of every 8th row until sleeve measures 20 cm.';
    expect(told(...sleeve, line)).toEqual(['3 place not known']);
    expect(told('Gauge: 20 sts and 28 rows = 10 cm.', ...sleeve, line)).toEqual([]);
    expect(told(...sleeve, 'Work in st st, inc 1 st at each end of every 8th row for 24 rows.')).toEqual([]);
  });
  const back = [
    'BACK',
    'Cast on 30 sts.',
    'Work in st st until piece measures 28 cm.',
    'Bind off 3 sts at beg of next 2 rows.',
  ];
  const front = (...end: readonly string[]) => [
    ...back,
    ...end,
    'FRONT',
    'Work as for back until armhole shaping is completed.',
    'Dec 1 st at each end of every row 4 times.',
    'Work until piece measures same as back to shoulder.',
  ];
  it('what is as long as another piece is hers to measure where that one has lengths', () => {
    const measured = rowsOf(...front('Work until piece measures 36 cm.', 'Bind off.'));
    expect(measured.slice(-2)).toEqual(['RS knit 16', 'WS purl 16']);
    const inRows = front('Work 2 rows.', 'Bind off.').map((line) =>
      line.replace(/until piece measures 28 cm/, 'for 2 rows'),
    );
    const counted = rowsOf(...inRows);
    expect(counted.at(-1)).toBe('WS dec, purl to last 2 sts, dec 16');
  });
});

it('behind another piece that is worked up to an unknown place nobody knows in what is gone on', () => {
  const text = [
    'BACK',
    'Cast on 30 sts.',
    'Knit 10 rows.',
    'Bind off.',
    'FRONT',
    'Cast on 34 sts.',
    'Work as for back up to the armhole.',
    'Dec 1 st at each end of next row.',
  ];
  expect(told(...text)).toEqual(['7 place not known', '8 from 7']);
  expect(rowsOf(...text).at(-1)).toBe('RS dec, work in pattern to last 2 sts, dec 32');
});

describe('what stands behind the name of a row', () => {
  const begun = ['FRONT', 'Cast on 36 sts.', 'Knit 4 rows.'];
  it.each(['Next row: Frumple to end.', 'Next row (RS): Frumple across.', 'Row 5: Frumple to end.'])(
    'is a row in whatever words, and told: %s',
    (line) => {
      const text = [...begun, line, 'Knit 2 rows.'];
      expect(told(...text).some((one) => one.startsWith('4 '))).toBe(true);
      expect(rowsOf(...text)).toHaveLength(7);
    },
  );
  it('talk that names none stays talk', () => {
    expect(told(...begun, 'Frumple to the end of the day.')).toEqual([]);
  });
});
