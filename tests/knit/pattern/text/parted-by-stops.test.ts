import { describe, expect, it } from 'vitest';
import { sentences } from '../../../../src/knit/pattern/text/sentences.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';
import { table } from '../table.ts';

/**
 * Leaflets that set a full stop behind every stitch, '1st row: K9. P2. K8.', and behind a turn: common practice, no
 * published source. ' / ' stands where a sentence ends, in every way of saying the line.
 */
const lines = table(`
  1st row: {K|P|Sl |Inc |Dec }9. K2
  1st row: {Work|M|C|Tog} 9. / K2
  Row 1: K9 {st|sts}. K2
  Row 1: {C6B|Cr3L|T4F|Tw3R|C4L}. K2
  Row 1: {C 6 B|X6B|C6K|C6}. / K2
  Row 1: {K2tog|Yo|Wl fwd|Sl 1, k1, psso|Ssk|Skp|K2, yfwd}. K2
  Row 1: {Inc in next st|Inc 1 st in next st}. K2
  Row 1: {Inc in last st|K to end}. / K2
  Row 1: K9. {K2|P2|Sl 2|Yo|Wl fwd|Ssk|Skp|K2tog|C6B|Cr3L|T4F|Tw3R|*K2|*C6B|*Yo}
  Row 1: K9. Inc 1 st in {next|last} st
  Row 1: K9. / {Inc 1 st in each st|Inc 2 sts|Dec 1 st in next st|K all sts|C 6 B}
  Row 1: K9. {Work|Patt|K|P} {to|in patt to} {end|last 4 sts}
  Row 1: K9. / {Work in st st to end|K to marker|Work until end}
  Row 1: K9. / {K|P|Sl} 2 {row|rows|times|ridges|inches|cm|rnd|rnds}
  Row 1: K9. K2 rib, p2
  {Next row|Row|Row 1 of a pattern here}: K9. K2
  {Rows 1|Big row in the back of this one here|1st size}: K9. / K2
  Row 1 K9. / K2
  1st row: K30. Turn. {Leave|Place|Sl|Put} {rem|the rem} sts on a holder
  1st row: K30. Turn. / {Leave|Place|Sl|Put} {these|the first|all} sts on a holder
  1st row: K30. Turn. / {Keep|Work} rem sts on a holder
  1st row: K30. Turn. / Work 4 rows
  1st row: K to end. / Turn
  K30. Turn. {Leave|Place} rem sts
  K30. Turn. / Work 4 rows
  Work 30 rows. / Turn. Leave rem sts
  1st row: K5. (P2. K5) 3 times. P2
  1st row: K5. / (See note) 3 times
  {Beginning|Starting} with a k row. St st 6 rows
  Work a k row. / St st 6 rows
  {Purl|K to end}{, then|, and| and} / bind off all sts
  Purl, then bind off 4 sts
  Row 2 and all{ |-}even rows. P
`);

describe('stitches and turns with a stop behind them', () => {
  it.each(lines)('are one row, and what is no stitch is a sentence of its own: $line', ({ texts }) => {
    const words = (text: string) => lex(text).map(({ text: word }) => word);
    for (const text of texts) {
      const tokens = lex(text.replaceAll(' / ', ' '));
      const cut = sentences(tokens).map(({ from, to }) =>
        tokens
          .slice(from, to)
          .filter((token, i, all) => i < all.length - 1 || token.text !== '.')
          .map(({ text: word }) => word),
      );
      const wanted = text.split(' / ').map((one) => words(one.replace(/\.$/, '')));
      expect(cut, text).toEqual(wanted);
    }
  });
});
