import { expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { expandRow } from '../../../../src/knit/row/expand.ts';

/** Line by line: the line that it hangs on, where one was not understood. */
const hangs = (text: string): (number | undefined)[] => readPattern(text).lines.map(({ follows }) => follows);

const failed = (text: string): number[] =>
  readPattern(text).lines.flatMap(({ line, faults }) => (faults.length > 0 ? [line] : []));

it('a pattern of which a row was not understood says so wherever it is worked again', () => {
  const text = `Back
Cast on 24 sts.
Row 1: k2, p2 across.
Row 2: wibble the sts of every wobble, k2.
Row 3: p2, k2 across.
Rep these 3 rows until piece measures 20 cm.
Work 8 rows in pattern.
Work 2 rows in st st.`;
  expect(failed(text)).toEqual([4]);
  expect(hangs(text)).toEqual([undefined, undefined, undefined, undefined, undefined, 4, 4, undefined]);
});

it('what is in pattern behind a repeat that was not understood hangs on that repeat, unless she says how many rows it is', () => {
  const text = (mend: string): string => `Cast on 12 sts.
Row 1: *k1, p1; rep from * to end.
Row 2: p.
Row 3: *k2, p2; rep from * to end.
Row 4: p.
Repeat rows 1-4 as the mood of your fancy takes you.${mend}
Work 3 rows in pattern.`;
  expect(failed(text(''))).toEqual([6]);
  expect(hangs(text(''))[6]).toBe(6);
  const [first] = readPattern(text(' [8 rows, 12 sts]')).lines[6]?.rows ?? [];
  expect(first && expandRow(first.steps, first.before).join('')).toBe('kp'.repeat(6));
});

it('so does one that was defined before there were stitches', () => {
  const text = `Pattern stitch
Row 1: k2, p2 across.
Row 2: wibble the sts of every wobble, k2.
Rep these 2 rows for pattern.
Back
Cast on 24 sts.
Work 8 rows in pattern.
Work 4 rows in garter st.`;
  expect(failed(text)).toEqual([3]);
  expect(hangs(text)[6]).toBe(3);
  expect(hangs(text)[7]).toBeUndefined();
});

it('so does one of which a row is missing, since nobody knows its number', () => {
  const text = `Pattern stitch
Row 1: k2, p2 across.
Row 2: p2, k2 across.
Two wobbles are now knit with 2 sts of each row tog.
Back
Cast on 24 sts.
Work 8 rows in pattern.
Work 4 rows in garter st.`;
  expect(failed(text)).toEqual([4]);
  expect(hangs(text)[6]).toBe(4);
  expect(hangs(text)[7]).toBeUndefined();
});

it('a name over rows to come makes none, and rows that go on to a count are none of a stitch pattern', () => {
  const { lines } = readPattern(`Cast on 20 sts.
Work 2 rows in st st.
Armhole Decreases
Bind off 2 sts at beg of next 2 rows.`);
  expect(lines[2]).toMatchObject({ kind: 'heading', rows: [], faults: [] });
  const unbegun = readPattern('Row 1: k2tog, k to end.\nRow 2: p.\nRep rows 1-2 until 8 sts rem.').lines;
  expect(unbegun[2]?.faults.map(({ code }) => code)).toEqual(['nothing on the needle']);
  const repeated = readPattern('Row 1: k2, p2.\nRow 2: p2, k2.\nRep rows 1-2 for pattern.').lines;
  expect(repeated[2]?.faults).toEqual([]);
});

it('a piece that is worked as another one hangs on what was not understood of that', () => {
  const text = `Back
Cast on 40 sts.
Work 10 rows in st st.
Then wibble both needles in the manner of a wobble, knitting 6 rows.
Bind off.
Front
Work as for back.
Sleeves
Cast on 20 sts.
Work 10 rows in st st.
Bind off.`;
  expect(hangs(text)[6]).toBe(4);
  expect(hangs(text).filter((line) => line !== undefined)).toEqual([4]);
});

it('a place of another piece takes over its shaping that was not understood, too', () => {
  const text = `Back
Cast on 40 sts.
Work 10 rows in st st.
Shape armholes: bind off 4 sts at beg of next 2 rows.
Dec at the wobble until 24 sts remain.
Work 4 rows in st st.
Bind off.
Front
Work as for back to armholes.
Shape armholes as for back.
Work 4 rows in st st.
Bind off.`;
  const { lines } = readPattern(text);
  expect(hangs(text)).toEqual([...new Array(9).fill(undefined), 5, undefined, undefined]);
  expect(lines[9]?.rows.map(({ own }) => own)).toEqual([
    undefined,
    undefined,
    'Dec at the wobble until 24 sts remain',
  ]);
});

it('what goes on as established behind words that were not understood hangs on them', () => {
  const text = `Cast on 8 sts.
Work 2 rows in wibble over all of it.
Work 2 rows as established.
Knit 1 row.
Work 2 rows in garter st.`;
  expect(hangs(text)).toEqual([undefined, undefined, 2, undefined, undefined]);
});

it('what she has said herself, a yarn told within a row and a buttonhole hang on nothing', () => {
  const mended = `Cast on 24 sts.
Row 1: k2, p2 across.
Row 2: wibble the sts of every wobble, k2. [1 row, 24 sts]
Rep rows 1 and 2 twice more.`;
  expect(hangs(mended)).toEqual([undefined, undefined, undefined, undefined]);
  const yarns = `Cast on 24 sts.
Row 1: with A, k2; with B, k2; rep from * to end.
Row 1: *with A k2, with B k2; rep from * to end.
Row 2: p to end.
Rep rows 1 and 2 twice more.`;
  expect(hangs(yarns)[4]).toBeUndefined();
});

it('a rib that was spelled in one row goes on as its stitches show', () => {
  const worked = (row: string, count: number) =>
    readPattern(`Cast on ${count} sts.\nRow 1: ${row}.\nRib for 3 rows.`).lines[2]?.rows.map(
      ({ steps, side, before }) => `${side} ${expandRow(steps, before).join('')}`,
    );
  // the row back begins with the stitch that was worked last, which shows as the other one
  const [right, wrong] = ['kkkp'.repeat(6), 'kppp'.repeat(6)];
  expect(worked('*k3, p1; rep from * to last st, k1', 25)).toEqual([
    `WS p${wrong}`,
    `RS ${right}k`,
    `WS p${wrong}`,
  ]);
  const ones = 'kp'.repeat(12);
  expect(worked('k1, p1 across', 24)).toEqual([`WS ${ones}`, `RS ${ones}`, `WS ${ones}`]);
});

it('what is no rib does not become one', () => {
  const text = 'Cast on 24 sts.\nRow 1: k across.\nRib for 3 rows.';
  expect(readPattern(text).lines[2]?.rows.some(({ steps }) => expandRow(steps, 24).includes('p'))).toBe(
    false,
  );
});
