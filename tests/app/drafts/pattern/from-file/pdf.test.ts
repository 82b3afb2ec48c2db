import { describe, expect, it } from 'vitest';
import { textOfPdf } from '../../../../../src/app/drafts/pattern/from-file/pdf.ts';
import { column, madePdf } from './made-pdf.ts';

/** A pattern of our own, set in one column 70 letters wide. */
const back = [
  'BACK',
  'With the smaller needles cast on 90 sts and work in k2, p2 rib for',
  '6 cm, ending with a WS row. Change to the larger needles and con-',
  'tinue in stocking stitch until the back measures 40 cm.',
  '',
  'Shape the armholes',
  'Bind off 4 sts at the beginning of the next 2 rows. 82 sts.',
  'Next row (RS): k2, ssk, knit to the last 4 sts, k2tog, k2. 80 sts.',
  'Next row: purl.',
];

describe('the text of a PDF', () => {
  it('is as it was written: what the page’s width broke goes on, what begins anew does not', async () => {
    expect(await textOfPdf(madePdf([column(60, 760, back)]))).toEqual({
      ok: true,
      value: [
        'BACK',
        'With the smaller needles cast on 90 sts and work in k2, p2 rib for 6 cm, ending with a WS row. Change to the larger needles and continue in stocking stitch until the back measures 40 cm.',
        '',
        'Shape the armholes',
        'Bind off 4 sts at the beginning of the next 2 rows. 82 sts.',
        'Next row (RS): k2, ssk, knit to the last 4 sts, k2tog, k2. 80 sts.',
        'Next row: purl.',
      ].join('\n'),
    });
  });

  it('leaves out what stands on every page, and goes on over the end of one', async () => {
    const page = (n: number, lines: readonly string[]) => [
      { text: 'A pullover for autumn', x: 60, y: 810 },
      ...column(60, 740, lines),
      { text: `Page ${n} of 2`, x: 270, y: 30 },
    ];
    const first = [...back.slice(0, 7), 'Next row (RS): k2, ssk, knit to the last 4 sts, k2tog and then'];
    expect(
      await textOfPdf(madePdf([page(1, first), page(2, ['knit the last 2 sts. 80 sts.'])])),
    ).toMatchObject({
      ok: true,
      value: expect.stringMatching(/82 sts\.\nNext row .*k2tog and then knit the last 2 sts\. 80 sts\.$/),
    });
  });

  it('is refused by what is wrong with it', async () => {
    const code = async (data: ArrayBuffer) => {
      const read = await textOfPdf(data);
      return read.ok ? read.value : read.faults[0]?.code;
    };
    expect(await code(madePdf([[]]))).toBe('document pictures only');
    expect(await code(madePdf([column(60, 700, back)], true))).toBe('document protected');
    expect(await code(new TextEncoder().encode('%PDF-1.4 and nothing more').buffer as ArrayBuffer)).toBe(
      'document damaged',
    );
    expect(await code(madePdf(Array.from({ length: 121 }, () => [])))).toBe('document too long');
  });
});
