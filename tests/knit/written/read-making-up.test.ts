import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { joinedAsTold } from '../../../src/knit/written/joined-as-told.ts';
import { readMakingUp } from '../../../src/knit/written/read-making-up.ts';

const told = (...lines: readonly string[]) =>
  readMakingUp(readPattern(['BACK', 'Cast on 20 sts.', '', ...lines].join('\n')));

const panel = (name: string, more: readonly string[] = []) => [
  name,
  'Cast on 20 sts.',
  'Row 1 (RS): Knit.',
  'Row 2 (WS): Purl.',
  'Rep rows 1 and 2 9 times more.',
  ...more,
  'Bind off all sts.',
  '',
];

describe('the making up of a pattern in words of others (sentences of our own, in the way of leaflets)', () => {
  it.each([
    ['Sew shoulder seams.', ['shoulder']],
    ['Join shoulders.', ['shoulder']],
    ['Set in sleeves.', ['armhole']],
    ['Sew sleeves into armholes.', ['armhole']],
    ['Sew in the sleeves.', ['armhole']],
    ['Sew side and sleeve seams.', ['side', 'sleeve']],
    ['Seam the raglan edges.', ['raglan']],
    ['Close side seams.', ['side']],
  ])('%s', (said, seams) => {
    const found = told('FINISHING', said);
    expect([...found.told.seams]).toEqual(seams);
    expect(found.unread).toEqual([]);
  });

  it('a row under the heading is worked, and no sentence that nobody reads', () => {
    const found = told(
      'FINISHING',
      'Sew side seams.',
      'Neckband: Cast on 9 sts.',
      'Knit 1 row.',
      'Bind off.',
    );
    expect(found.unread).not.toContain('Knit 1 row');
  });

  it('between two stops nothing is said', () => {
    expect(told('FINISHING', 'Fold the hem.. Sew side seams.').unread).toEqual(['Fold the hem']);
    expect(told('FINISHING', 'Fold the hem...').unread).toEqual(['Fold the hem']);
  });

  it('under a heading on its own line, or before a colon', () => {
    for (const heading of ['TO MAKE UP', 'Making up', 'ASSEMBLY', 'Finishing:'])
      expect([...told(heading, 'Sew side seams.').told.seams], heading).toEqual(['side']);
    expect([...told('Finishing: Sew side seams. Set in sleeves.').told.seams]).toEqual(['side', 'armhole']);
  });

  it.each([
    [true, 'Making up instructions'],
    [true, 'Finishing the garment'],
    [true, 'To finish'],
    [true, 'FINISHING THE WHOLE GARMENT NOW'],
    [false, 'Finishing the garment now'],
    [false, 'Finishing the whole garment now: it is quick'],
    [false, 'To make up this garment in wool'],
    [false, 'To wear it'],
    [false, 'Make up'],
  ])('is under a heading (%s): %s', (is, heading) => {
    expect([...told(heading, 'Sew side seams.').told.seams]).toEqual(is ? ['side'] : []);
  });

  it('behind the colon of a heading of three words, and not of one of four', () => {
    expect([...told('FINISHING THE GARMENT: SEW SIDE SEAMS.').told.seams]).toEqual(['side']);
    expect([...told('FINISHING OF THE GARMENT: SEW SIDE SEAMS.').told.seams]).toEqual([]);
  });

  it('a line below its heading has a colon of its own', () => {
    for (const heading of ['FINISHING', 'TO MAKE UP'])
      for (const line of [
        'Join shoulders: sew them flat.',
        'Sew side seams: 60 rows to 62 rows.',
        'Set in sleeves: ease them in.',
      ]) {
        const seam = line.includes('shoulder') ? 'shoulder' : line.includes('side') ? 'side' : 'armhole';
        expect([...told(heading, line).told.seams], `${heading} ${line}`).toEqual([seam]);
      }
    expect(told('FINISHING', 'Sew side seams: 60 rows to 62 rows.').told.side).toEqual({
      back: 60,
      front: 62,
    });
  });

  it('what is not understood of it is kept as it stands, what belongs to another section is not', () => {
    const found = told(
      'FINISHING',
      'Block all pieces. Fold the hem to the inside and slip it down. Sew side seams.',
      'Weave in ends.',
      '',
      'CARE',
      'Wash it by hand.',
    );
    expect(found.unread).toEqual(['Fold the hem to the inside and slip it down']);
    const worn = told('TO MAKE UP', 'Sew side seams.', '', 'TO WEAR IT', 'Sew shoulder seams.');
    expect([...worn.told.seams]).toEqual(['side']);
  });

  it('of each size only what is meant for it', () => {
    const lines = [
      'Sizes: S (M, L)',
      '',
      'BACK',
      'Cast on 20 (22, 24) sts.',
      '',
      'MAKING UP',
      'Size S only: Sew side seams. Fold the hem.',
      'Sizes M and L only: Set in sleeves.',
      'Sew shoulder seams.',
    ];
    const found = (size: number) => {
      const { told: said, unread } = readMakingUp(readPattern(lines.join('\n'), { size }));
      return [[...said.seams], unread];
    };
    expect(found(0)).toEqual([['side', 'shoulder'], ['Fold the hem']]);
    expect(found(1)).toEqual([['armhole', 'shoulder'], []]);
    expect(found(2)).toEqual([['armhole', 'shoulder'], []]);
  });

  it('our own sentence outside of any heading is read, and one of others is not', () => {
    expect([...told('Sew side seams: 60 rows to 62 rows.').told.seams]).toEqual(['side']);
    expect(told('Sew side seams: 60 rows to 62 rows.').told.side).toEqual({ back: 60, front: 62 });
    expect([...told('Sew the side to the other side.').told.seams]).toEqual([]);
  });
});

describe('a read pattern is joined as its text tells', () => {
  const text = [...panel('BACK'), ...panel('FRONT'), ...panel('SLEEVE (make 2)')];

  it('the side ends where the text has it end, whatever the shapes would say', () => {
    const read = readPattern([...text, 'MAKING UP', 'Sew side seams: 10 rows to 10 rows.'].join('\n'));
    const { joints = [], unread } = joinedAsTold(read);
    const sides = joints.filter((joint) => joint.kind === 'seam' && joint.of === 'side');
    expect(sides).toHaveLength(2);
    for (const side of sides)
      if (side.kind === 'seam') expect(side.a[0]?.rows).toEqual({ first: 1, last: 10 });
    expect(unread).toEqual([]);
  });

  it('figures with which less would meet are not taken: it is proposed from the pieces, and told', () => {
    const read = readPattern([...text, 'MAKING UP', 'Sew side seams: 12 rows to 12 rows.'].join('\n'));
    expect(joinedAsTold(read)).toEqual({ unread: ['Sew side seams: 12 rows to 12 rows'] });
  });

  it('what is not understood is told beside what is sewn', () => {
    const said = ['FINISHING', 'Fold the hem. Sew side seams. Sew sleeve seams.'];
    const lines = [...panel('BACK'), ...panel('FRONT'), ...said];
    const { joints = [], unread } = joinedAsTold(readPattern(lines.join('\n')));
    expect(joints.filter((joint) => joint.kind === 'seam' && joint.of === 'side')).toHaveLength(2);
    expect(unread).toEqual(['Fold the hem', 'Sew sleeve seams']);
  });

  const sewn = (of: string, lines: readonly string[]) =>
    (joinedAsTold(readPattern(lines.join('\n'))).joints ?? []).flatMap((joint) =>
      joint.kind === 'seam' && joint.of === of ? [joint.a[0], joint.b[0]] : [],
    );

  it('each sleeve is sewn in by itself', () => {
    const caps = sewn('armhole', [...text, 'MAKING UP', 'Sew shoulder seams.', 'Set in sleeves.']);
    expect(caps.filter((one) => one?.piece === 'Sleeve').map((one) => one?.make)).toEqual([1, 2]);
  });

  it('two fronts that are mirror images are sewn to the back at one edge each, and have their neck at the other', () => {
    const body = (stitches: number, top: readonly string[]) => [
      `Cast on ${stitches} sts.`,
      'Row 1 (RS): Knit.',
      'Row 2 (WS): Purl.',
      'Rep rows 1 and 2 4 times more.',
      ...top,
      'Row 14 (WS): Purl.',
      'Rep rows 13 and 14, 3 times more.',
      'Bind off all sts.',
      '',
    ];
    const lines = [
      'BACK',
      ...body(40, [
        'Row 11 (RS): Bind off 4 sts, knit to end. (36 sts)',
        'Row 12 (WS): Bind off 4 sts, purl to end. (32 sts)',
        'Row 13 (RS): Knit.',
      ]),
      'FRONT (make 2, the second as a mirror image)',
      ...body(20, [
        'Row 11 (RS): Bind off 4 sts, knit to end. (16 sts)',
        'Row 12 (WS): Purl.',
        'Row 13 (RS): Knit to last 3 sts, k2tog, k1. (15 sts)',
      ]),
      'MAKING UP',
      'Sew shoulder seams.',
      'Sew side seams: 10 rows to 10 rows.',
    ];
    expect(sewn('side', lines).map((one) => `${one?.piece} ${one?.make} ${one?.edge}`)).toEqual([
      'Front 1 right',
      'Back 1 left',
      'Front 2 left',
      'Back 1 right',
    ]);
  });

  it('a seam that it names and that no piece has is told, not passed over', () => {
    const read = readPattern([...panel('BACK'), 'FINISHING', 'Sew sleeve seams.'].join('\n'));
    expect(joinedAsTold(read).unread).toEqual(['Sew sleeve seams']);
  });

  it('a text that says nothing of it states nothing', () => {
    expect(joinedAsTold(readPattern(text.join('\n')))).toEqual({ unread: [] });
  });
});
