import { describe, expect, it } from 'vitest';
import { withMend } from '../../../../src/app/drafts/pattern/draft.ts';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { nearestReadings } from '../../../../src/knit/pattern/readings.ts';
import { aloneOnLine } from '../../../../src/knit/pattern/text/with-lines.ts';

/** A back of our own as leaflets print it: all of it one paragraph, broken where the column ends. */
const LEAFLET = `BACK: Cast on 40 sts. Work 6 rows in garter st. Wibble the edge of it for 4 rows, knit
them all. Knit 2 rows. Frumple 3 sts of each row. Next row: k2tog, k to last 2 sts, k2tog. 38 sts.
Knit 5 rows. Bind off.`;

const marked = (text: string) =>
  readPattern(text).lines.flatMap((line) => line.unread.map((one) => ({ line, one })));

/** The first sentence that is marked, with what she says of it. */
function mended(text: string, rows: number, stitches?: number): string {
  const [first] = marked(text).filter(({ line }) => !line.mended);
  const { line, one } = first ?? expect.unreachable('nothing is marked');
  const alone = aloneOnLine(text, one, line.lastLine);
  return withMend(alone.text, alone.lastLine, { rows, ...(stitches === undefined ? {} : { stitches }) });
}

const rowsOf = (text: string) =>
  readPattern(text).pieces[0]?.recipe.parts[0]?.sections.reduce((sum, { rows }) => sum + rows, 0);

describe('what she says of a sentence in a paragraph', () => {
  it('is asked of each sentence that was not understood, and of no other', () => {
    expect(marked(LEAFLET).map(({ one }) => [one.words, one.line, one.rows, one.after])).toEqual([
      ['Wibble the edge of it for 4 rows, knit them all', 1, 4, 40],
      ['Frumple 3 sts of each row', 2, 1, 40],
    ]);
  });

  it('stands behind that sentence, which has a line of its own then; the rest is read as before', () => {
    const once = mended(LEAFLET, 4, 40);
    expect(once).toBe(`BACK: Cast on 40 sts. Work 6 rows in garter st.
Wibble the edge of it for 4 rows, knit
them all. [4 rows, 40 sts]
Knit 2 rows. Frumple 3 sts of each row. Next row: k2tog, k to last 2 sts, k2tog. 38 sts.
Knit 5 rows. Bind off.`);
    const twice = mended(once, 0);
    expect(twice).toContain('\nFrumple 3 sts of each row. [no rows]\nNext row: ');
    expect(readPattern(twice).lines.flatMap(({ faults }) => faults)).toEqual([]);
    expect(rowsOf(twice)).toBe(6 + 4 + 2 + 1 + 5);
  });

  it('stays where it is when the text is changed elsewhere', () => {
    const twice = mended(mended(LEAFLET, 4, 40), 0);
    const edited = `A note in front.\n\n${twice.replace('Knit 5 rows', 'Knit 7 rows')}`;
    expect(readPattern(edited).lines.flatMap(({ faults }) => faults)).toEqual([]);
    expect(rowsOf(edited)).toBe(6 + 4 + 2 + 1 + 7);
  });

  it('is said otherwise behind the same sentence', () => {
    const once = mended(LEAFLET, 4, 40);
    const { line, one } = marked(once)[0] ?? expect.unreachable('it can be said anew');
    const alone = aloneOnLine(once, one, line.lastLine);
    expect(alone.text).toBe(once);
    expect(withMend(alone.text, alone.lastLine, { rows: 5 })).toBe(
      once.replace('[4 rows, 40 sts]', '[5 rows]'),
    );
  });

  it('ends its line, whatever the next begins with', () => {
    const text =
      'Cast on 20 sts.\nWibble the whole of the edge of it. [3 rows, 20 sts]\nrib 4 rows. Bind off.';
    expect(readPattern(text).lines.map(({ line, mended }) => [line, mended])).toEqual([
      [1, false],
      [2, true],
      [3, false],
    ]);
  });

  it('leaves a bullet before its sentence', () => {
    const text = 'SCARF\nCast on 20 sts.\n• Wibble the edge for 4 rows. Knit 2 rows.';
    expect(mended(text, 4, 20)).toBe(
      'SCARF\nCast on 20 sts.\n• Wibble the edge for 4 rows. [4 rows, 20 sts]\nKnit 2 rows.',
    );
  });

  it('is asked where a sentence does not come out, and not where only its count contradicts', () => {
    const text = 'Cast on 20 sts. Knit 2 rows. Next row: k18. Knit 1 row. (21 sts)';
    expect(marked(text).map(({ one }) => [one.words, one.rows])).toEqual([['Next row: k18', 1]]);
  });

  it('leaves a row its number, by which it is worked again', () => {
    const row = (more: string) =>
      `Row 1: knit. Row 2: purl. Row 3: wibble 3 sts, knit to end.${more}\nRow 4: purl.`;
    const rep = 'Rep rows 1-4 until 12 rows have been worked. Bind off.';
    for (const text of [
      `BACK\nCast on 20 sts.\n${row(' [1 row, 20 sts]')}\n${rep}`,
      `WIMBLE STITCH\n${row(' [1 row, 20 sts]')}\nBACK\nCast on 20 sts. Work 12 rows in wimble stitch. Bind off.`,
    ]) {
      expect(readPattern(text).lines.flatMap(({ faults }) => faults.map(({ code }) => code))).toEqual([]);
      expect(rowsOf(text)).toBe(12);
    }
  });

  it('may be one of the nearest readings, which leave the other sentences alone', () => {
    const text = 'Cast on 20 sts. Knit 2 rows. Next row: k2, k2tgo, knit to end. 19 sts. Wibble the edge.';
    const { line, one } = marked(text)[0] ?? expect.unreachable('it is marked');
    const alone = aloneOnLine(text, one, line.lastLine);
    expect(nearestReadings(alone.text, alone.line)[0]?.text).toBe('Next row: k2, k2tog, knit to end.');
  });
});
