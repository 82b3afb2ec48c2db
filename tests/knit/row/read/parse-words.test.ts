import { describe, expect, it } from 'vitest';
import { printRow } from '../../../../src/knit/row/print.ts';
import { parseRow } from '../../../../src/knit/row/read/parse.ts';
import { told } from '../../../told.ts';

/** What a row is read as, in our own printed words; a refusal as its sentence. */
const read = (text: string): string => {
  const row = parseRow(text);
  return row.ok ? printRow(row.value) : `refused: ${told(row.faults)}`;
};

/** Wordings as patterns use them (common practice, no published source, unless a line says otherwise). */
const cases: readonly (readonly [string, string])[] = [
  ['k2, k2tog, knit to end', 'k2, k2tog, knit to end'],
  ['K2,P2', 'k2, p2'],
  ['k2p2', 'k2, p2'],
  ['K. 2, P. 2.', 'k2, p2'],
  ['KNIT 2, PURL 2 TOGETHER', 'k2, p2tog'],
  ['knit', 'knit'],
  ['Purl.', 'purl'],
  ['K', 'knit'],
  ['k across row', 'knit'],
  ['Purl back', 'purl'],
  ['knit all sts', 'knit'],
  ['k to last 4 sts, k2tog, k2', 'knit to last 4 sts, k2tog, k2'],
  ['k to 3 sts from the end, k3tog', 'knit to last 3 sts, k3tog'],
  ['k until 2 sts remain, k2tog', 'knit to last 2 sts, k2tog'],
  ['*k1, p1; rep from * to end', '*k1, p1; repeat from * to end'],
  ['*k1, p1* to last 2 sts, k2', '*k1, p1; repeat from * to last 2 sts, k2'],
  ['*K 1, P 1, repeat from * across row, ending with K 1.', '*k1, p1; repeat from * to last st, k1'],
  ['*P1, K1; rep from * across, end P1', '*p1, k1; repeat from * to last st, p1'],
  ['p2, *k4, p2, k1, p2; rep from *', 'p2, *k4, p2, k1, p2; repeat from * to end'],
  [
    '*k1, p1, rep from * 3 times, k2, rep from * to end',
    '[k1, p1] 4 times, k2, *k1, p1; repeat from * to end',
  ],
  // the star before 'rep' opens nothing: the row goes on behind it
  ['*k1, p1*, * rep 3 times, knit', '[k1, p1] 4 times, knit to end'],
  ['sl 1, * k 1, p 1 * repeat between *’s to last st, k 1', 'sl1, *k1, p1; repeat from * to last st, k1'],
  ['*k3, rep from * ending last rep k2', '*k3; repeat from * to last 2 sts, k2'],
  ['*[k1, p1] twice, k2; rep from * to last st, k1', '*[k1, p1] 2 times, k2; repeat from * to last st, k1'],
  [
    '(k1, yo) twice, [k2tog, (p1, k1) 3 times] 4 times',
    '[k1, yo] 2 times, [k2tog, [p1, k1] 3 times] 4 times',
  ],
  ['3 x [k2, p2]', '[k2, p2] 3 times'],
  ['k1, p1 across', '*k1, p1; repeat from * to end'],
  ['K1, P1, rep to end', '*k1, p1; repeat from * to end'],
  ['(k2, p2) over next 12 sts, k to end', '[k2, p2] 3 times, knit to end'],
  ['sl 1, k1, psso', 'skp'],
  ['sl1-k2tog-psso', 'sk2p'],
  ['sl 2 tog knitwise, k1, p2sso', 's2kp'],
  ['Slip 1, knit 1, pass slipped stitch over', 'skp'],
  ['slip, slip, knit', 'ssk'],
  ['sl 1, k1, p.s.s.o., k 2 tog.', 'skp, k2tog'],
  ['k2 tog tbl, yo, k2 tog through back loops', 'k2tog tbl, yo, k2tog tbl'],
  ['k2tog 3 times, k1', '[k2tog] 3 times, k1'],
  ['k into front and back of next st, p to end', 'kfb, purl to end'],
  ['k1f&b, kfb, pfb', 'kfb, kfb, pfb'],
  ['k1, M1L, k to last st, m1R, k1', 'k1, m1l, knit to last st, m1r, k1'],
  ['make 1, m1p', 'm1, m1p'],
  ['inc in each of next 3 sts', '[inc] 3 times'],
  ['yrn, p1, yfwd, wl fwd, yarn over', 'yo, p1, yo, yo, yo'],
  ['over, narrow', 'yo, k2tog'],
  ['sl 1 purlwise wyif, sl 1 wyib', 'sl wyif, sl wyib'],
  ['ktbl, p1 tbl, k1b', 'k tbl, p tbl, k1 below'],
  ['C4F, p2, C4B, 2/2 LC, 3/3 RPC, T3B', 'c4f, p2, c4b, 2/2 lc, 3/3 rpc, t3b'],
  ['slip, k and pass, k2', 'skp, k2'],
  ['sl next 3 sts to cn and hold in front, k3, k3 from cn', 'c6f'],
  ['bind off 5 sts, k to end', 'bind off 5 sts, knit to end'],
  ['Cast off all sts loosely', 'bind off all sts in pattern'],
  ['K17, bind off next 17 sts, K to end.', 'k17, bind off 17 sts, knit to end'],
  ['k 14, sl 12 to holder, k to end', 'k14, place 12 sts on holder, knit to end'],
  ['k next 5 sts, p across next 3 sts', 'k5, p3'],
];

describe('a row in a pattern’s words', () => {
  it.each(cases)('%s', (text, printed) => {
    expect(read(text)).toBe(printed);
  });

  it('takes ‘rep from * n times’ as n further times (Star Book No. 223, American Thread Co., p. 22)', () => {
    expect(read('*k1, p1; rep from * 3 times')).toBe('[k1, p1] 4 times');
    expect(read('*k1, p1; rep from * 3 times more')).toBe('[k1, p1] 4 times');
    expect(read('*k1, p1; rep from * 3 times in all')).toBe('[k1, p1] 3 times');
  });

  it('takes the number behind brackets as the total (Bulkies, Book No. 006, American Thread Co.)', () => {
    expect(read('(k1, p1) twice')).toBe('[k1, p1] 2 times');
  });

  it('refuses with line, column and what was expected', () => {
    const row = parseRow('k2, p2,\nk1, wibble 3');
    expect(row.ok).toBe(false);
    if (row.ok) return;
    expect(row.faults[0]?.at).toMatchObject({ line: 2, column: 5 });
    expect(row.faults[0]).toMatchObject({ code: 'stitch or repeat expected', figures: { column: 5 } });
  });

  it('says of an empty row that a stitch was expected at its beginning, and behind a row that ends too soon', () => {
    const faults = (text: string) => {
      const row = parseRow(text);
      return row.ok ? [] : row.faults.map(({ code, at }) => [code, at.line, at.column]);
    };
    expect(faults('')).toEqual([['stitch expected', 1, 1]]);
    expect(faults('  ,')).toEqual([['stitch expected', 1, 4]]);
    expect(faults('rep')).toEqual([['nothing before the repeat', 1, 4]]);
    expect(faults('k2,\nrepeat')).toEqual([]);
  });

  it('says where stitches are put that nobody says the place of', () => {
    for (const text of ['k12, place them', 'k12, put these', 'k12, leave those 12 sts']) {
      const row = parseRow(text);
      expect(row.ok ? [] : row.faults.map(({ code, at }) => [code, at.column]), text).toEqual([
        ['stitch or repeat expected', 6],
      ]);
    }
    expect(read('k12, place them on a holder')).toBe('k12');
  });

  it('says where a bracket was not closed', () => {
    const row = parseRow('k1, (k2, p2');
    expect(row.ok ? [] : row.faults).toMatchObject([
      { code: 'bracket expected', at: { line: 1, column: 12 }, figures: { bracketText: ')' } },
    ]);
  });

  it('asks for the count where a row cannot be known without it', () => {
    const row = parseRow('dec 4 sts evenly across');
    expect(row.ok ? '' : row.faults[0]?.code).toBe('count not known');
  });
});
