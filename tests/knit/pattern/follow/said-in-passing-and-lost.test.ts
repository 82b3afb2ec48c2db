import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { rowsOf } from './rows-of.ts';

/** Lines with a mark, by their numbers. How patterns are usually worded: common practice, no published source. */
const marked = (...text: readonly string[]): readonly number[] =>
  readPattern(text.join('\n')).lines.flatMap(({ line, faults }) => (faults.length > 0 ? [line] : []));

/** The sections of the first piece's first part, with their rows. */
const sections = (...text: readonly string[]): readonly string[] =>
  readPattern(text.join('\n')).pieces[0]?.recipe.parts[0]?.sections.map(
    ({ rows, name }) => `${rows} ${name}`,
  ) ?? [];

const begun = ['BACK', 'With A, cast on 34 sts.', 'Knit 4 rows.'];

describe('a yarn that is changed', () => {
  it.each([
    'Switch to your main color.',
    'Change to the main colour.',
    'Join the main color.',
    'With your main color,',
    'In the main colour,',
  ])('%s', (words) => {
    expect(sections(...begun, `${words} Work 6 rows in st st.`.replace(', Work', ', work'))).toEqual([
      '4 stocking, A',
      '6 stocking, main',
    ]);
  });
  it.each(['Change to the smaller needles.', 'Join the shoulder seam.'])('%s names none', (words) => {
    expect(sections(...begun, words, 'Work 6 rows in st st.')).toEqual(['4 garter', '6 stocking']);
  });
});

describe('several strands at once', () => {
  it.each([
    ['With 2 strands of yarn held together,', '2 strands of yarn held together'],
    ['Holding A and B together,', 'A and B together'],
    ['With 1 strand of A and 1 strand of B held together,', '1 strand of A and 1 strand of B held together'],
    ['Using yarn double,', 'yarn double'],
    ['With a single strand,', 'a single strand'],
  ])('%s stand at the rows', (words, name) => {
    expect(sections('BACK', `${words} cast on 34 sts.`, 'Knit 5 rows.')).toEqual([`5 stocking, ${name}`]);
    expect(sections('BACK', 'Cast on 34 sts.', 'Knit 5 rows.', `${words} knit 3 rows.`)[1]).toBe(
      `3 garter, ${name}`,
    );
  });
  it.each(['', 'Note: '])('%sthroughout: of all pieces', (lead) => {
    const piece = ['Cast on 34 sts.', 'Knit 5 rows.', 'Bind off.'];
    const text = [`${lead}Use 2 strands of yarn throughout.`, 'BACK', ...piece, 'FRONT', ...piece];
    const { pieces } = readPattern(text.join('\n'));
    expect(pieces.map(({ recipe }) => recipe.parts[0]?.sections[0]?.name)).toEqual([
      'stocking, 2 strands of yarn',
      'stocking, 2 strands of yarn',
    ]);
  });
  it.each(['K2 together at each end of next row.', 'Work 2 together at each end of next row.'])(
    '%s is a row',
    (row) => {
      expect(sections('BACK', 'Cast on 34 sts.', 'Knit 4 rows.', row)).toEqual(['4 garter', '1 garter']);
    },
  );
});

describe('the rest of a sentence that bids something', () => {
  it.each(['Attach yarn and work other front.', 'Attach yarn and finish the other front.'])('%s', (line) => {
    const parted = ['Next row: K17, turn, leaving rem sts on a holder.', 'Knit 4 rows. Bind off.'];
    expect(marked(...begun, ...parted, line)).toEqual([6]);
  });
});

describe('a section that was told to be in a fabric', () => {
  const hem = ['FRONT', 'Cast on 12 sts.', 'Hem, in garter st:', 'Row 1: Knit.'];
  it('goes on in it behind a row spelled out', () => {
    expect(rowsOf(...hem, 'Work 3 rows.').slice(1)).toEqual(['WS knit 12', 'RS knit 12', 'WS knit 12']);
  });
  it('until another one is named', () => {
    expect(rowsOf(...hem, 'Work 2 rows in st st.').slice(1)).toEqual(['WS purl 12', 'RS knit 12']);
    expect(rowsOf(...hem, 'Row 2: Purl.', 'Rep rows 1 and 2 once.', 'Work 2 rows.').slice(-2)).toEqual([
      'RS knit 12',
      'WS purl 12',
    ]);
  });
});

describe('the armhole of another piece', () => {
  const end = 'Bind off 5 sts at beg of next 4 rows. Bind off.';
  const back = (straight: string) => [
    'BACK',
    'Cast on 60 sts.',
    'Work 10 rows in st st.',
    `Shape armholes: Bind off 4 sts at beg of next 2 rows. Dec 1 st at each end of next 3 RS rows. ${straight} ${end}`,
    'FRONT',
    'Cast on 60 sts.',
    'Work 10 rows in st st.',
    'Shape armholes as for back.',
  ];
  it.each(['Knit 6 rows.', 'Work 6 rows.', 'Purl 1 row. Knit 7 rows.'])('ends before %s', (straight) => {
    expect(rowsOf(...back(straight)).at(-1)).toBe('RS dec, knit to last 2 sts, dec 46');
  });
  it.each(['K 1 row.', 'Knit 2 rows.'])('goes on over %s', (straight) => {
    expect(rowsOf(...back(straight)).at(-1)).not.toMatch(/dec/);
  });
});

describe('rows that come at the end', () => {
  it.each(['End the piece with 4 rows of garter st.', 'Finish each front with 4 rows in garter st.'])(
    '%s are not passed over',
    (line) => {
      expect(marked(...begun, line)).toEqual([4]);
    },
  );
  it('of which there are none are', () => {
    expect(marked(...begun, 'End with a WS row.')).toEqual([]);
  });
});

describe('numbered rows until the yarn is used up', () => {
  const rows = ['Row 1: Knit.', 'Row 2: Purl.', 'Row 3: K2, p to end.', 'Row 4: K2, p to end.'];
  it.each(['until a few yards of yarn are left', 'until it is as long as you like'])(
    '%s, ending with the last of them, are a stretch',
    (until) => {
      const text = [...begun, ...rows, `Repeat these 4 rows ${until}, ending with row 4.`, 'Knit 2 rows.'];
      const { lines } = readPattern(text.join('\n'));
      expect(lines[7]?.lengths).toEqual([{ open: true, rows: 4 }]);
    },
  );
});

describe('stitches that a turn parted', () => {
  it.each(['In the next row K14 turn.', 'Next row: K14, turn.'])('%s', (row) => {
    const on = ['Work on the first 14 sts as follows:', 'Decrease once at the neck edge.', 'Purl 1 row.'];
    const text = ['LEFT FRONT', 'Cast on 34 sts.', 'Work 4 rows in st st.', row, ...on];
    expect(rowsOf(...text).slice(-2)).toEqual(['WS dec, purl to end 13', 'RS purl 13']);
    expect(marked(...text)).toEqual([]);
  });
});

describe('how often, behind a shaping', () => {
  const row = (words: string) => marked('BACK', 'Cast on 60 sts.', 'Work 10 rows in st st.', words);
  it.each([
    'Bind off 3 sts (twice at each side).',
    'Dec 1 st at each end of next row (twice at each side).',
    'Bind off 3 sts at beg of next row (twice in all at each side).',
  ])('%s is no remark', (words) => {
    expect(row(words)).toEqual([4]);
  });
  it.each([
    'Bind off 3 sts at beg of next 4 rows (twice at each side).',
    'Bind off 3 sts at beg of next 2 rows (once at each side).',
  ])('%s says it again', (words) => {
    expect(row(words)).toEqual([]);
  });
});

describe('what a note above all pieces asks of every row', () => {
  it('is done', () => {
    const text = ['Note: Always slip the first st of every row.', 'BACK', 'Cast on 9 sts.', 'Knit 2 rows.'];
    expect(rowsOf(...text)).toEqual(['RS sl1, knit to end 9', 'WS sl1, knit to end 9']);
  });
});

describe('rows that are repeated and nobody says how often', () => {
  const rows = [...begun, 'Row 1: Knit.', 'Row 2: Purl.'];
  it.each(['Knit 4 rows.', 'Bind off.', 'Change to 5 mm needles. Knit 4 rows.'])(
    'are told before %s',
    (next) => {
      expect(marked(...rows, 'Rep these 2 rows.', next)).toEqual([6]);
    },
  );
  it.each([
    'Work until piece measures 20 cm.',
    'Dec 1 st at each end of every 4th row 3 times.',
    'Next row: Purl.',
  ])('are the pattern before %s', (next) => {
    expect(marked(...rows, 'Rep these 2 rows.', next)).toEqual([]);
  });
  it('are worked once more where it says again', () => {
    expect(rowsOf(...rows, 'Rep rows 1 and 2 again.').length).toBe(8);
    expect(marked(...rows, 'Rep rows 1 and 2 again.')).toEqual([]);
  });
});

describe('stitches that are cabled on', () => {
  it.each([
    'Cable on 40 stitches to a #2 circular needle.',
    'For short sleeves, cable 40 stitches onto #2 needles.',
  ])('%s begins a piece', (line) => {
    expect(rowsOf('BODY', line, 'Knit 1 row.')).toEqual(['RS knit 40']);
  });
  it.each(['Work cable on 12 sts.', 'Next row: work cable on 12 sts, k to end.'])(
    '%s begins none',
    (line) => {
      expect(readPattern([...begun, line, 'Knit 2 rows.'].join('\n')).pieces.length).toBe(1);
      expect(marked(...begun, line)).toEqual([4]);
    },
  );
});

describe('three sets of stitches that are put away one after the other', () => {
  const sets = 'Slip first 10 sts onto a holder, slip center 14 sts to second holder';
  it('are as many as they say', () => {
    const { lines } = readPattern(['BACK', 'Cast on 34 sts.', 'Knit 4 rows.', `${sets}.`].join('\n'));
    expect(lines[3]?.after).toBe(10);
  });
});

describe('the last row of a pattern', () => {
  const pattern = ['Row 1: Knit.', 'Row 2: Purl.', 'Row 3: K2, p to end.', 'Row 4: Purl.'];
  it.each(['end with pat. row 2', 'ending with row 2 of pattern'])('%s', (end) => {
    const text = [...begun, ...pattern, `Work even until 10 cm above marker, ${end}.`];
    expect(rowsOf(...text).at(-1)).toBe('WS purl 34');
    expect(rowsOf(...text).at(-2)).toBe('RS knit 34');
  });
});

describe('stitches that a row puts on a holder, and then words that nobody reads', () => {
  it.each([
    'K 20 sts and place on stitch holder.',
    'Next row: Work across 20 sts and slip them to a holder.',
  ])('%s wait, and the others go on', (row) => {
    const text = [...begun, row, 'Wobble the neck edge on the next 2 rows, k in wobble.', 'Work 1 row.'];
    const { lines } = readPattern(text.join('\n'));
    expect(lines[4]?.rows.map(({ after }) => after)).toEqual([14, 14]);
    expect(lines[5]?.after).toBe(14);
  });
  it('all go on where the row only binds off between', () => {
    const row = 'Next row: K14, bind off 6 sts, k to end.';
    const { lines } = readPattern([...begun, row, 'Wobble both sides at once for 2 rows.'].join('\n'));
    expect(lines[4]?.rows.map(({ after }) => after)).toEqual([28, 28]);
  });
});

describe('a length in words that nobody reads', () => {
  it.each([
    ['ending with a wrong side row', 'RS knit 34'],
    ['ending with a RS row', 'WS knit 34'],
    ['or so', 'WS knit 34'],
  ])('%s ends so', (end, next) => {
    const line = `Continue in wobble (as over there) until work measures 9 cm, ${end}.`;
    expect(rowsOf(...begun, line, 'Next row: Knit.').at(-1)).toBe(next);
    expect(marked(...begun, line)).toEqual([4]);
  });
});
