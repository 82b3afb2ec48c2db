import { describe, expect, it } from 'vitest';
import { fault } from '../../../../src/knit/fault.ts';
import { ownWords } from '../../../../src/knit/pattern/say/own-words.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';
import { table } from '../table.ts';

const flags = ['work', 'castsOn', 'another', 'asks', 'bids', 'open'] as const;

/** What is known of a sentence that stays as it stands: does it work, whom like, and how many rows. */
function known(text: string): string {
  const tokens = lex(text);
  const words = ownWords(text, tokens, fault('nothing on the needle'), { from: 0, to: tokens.length }, 0, 1);
  const said = flags.filter((flag) => words[flag]);
  return [...said, ...(words.rows === 1 ? [] : [`${words.rows} rows`])].join(' ') || 'nothing';
}

/** How patterns are usually worded: common practice, no published source. */
describe('a sentence in words of its own', () => {
  it.each(
    table(`
      {Work|Make|K|Knit} {exactly|just|} {to match|to correspond} the other half → another bids
      {Work|Make|K} {the|} {back|front|sleeve|it} {in|} {the|} same {way|manner} as before → another bids
      {Work|Make|Knit} {exactly|just|the|} {same|like} as for the first → another bids
      Work {the|} same {on|at} the other {side|shoulder|edge} → another bids
      Do {the|} same {on|at} the other {side|shoulder|edge} → another bids
      Work the same on {the other end|the other needle|this side|this shoulder|this edge} → bids
      Do the same on this {side|shoulder|edge} → bids
      Work {rows 1-9|rows 1 to 9} of the chart → work asks bids 9 rows
      {K|P} rows 1-9 of the chart → work asks bids 9 rows
      Rep rows 1-9 of the chart → work asks bids
      Work rows {9-1|1 and 9} of the chart → work asks bids
      {Then |Now |And |, |* |- |}work for a further 14 rows in wibble → work asks bids 14 rows
      Fancy the next 2 rows in wibble → work 2 rows
      Fancy the last 2 rows in wibble → work
      Fancy stitch until {the band is long enough|it is enough} → open
      Fancy stitch {for 5 cm|until it measures 5 cm} → work open
      Fancy stitch until {the|there are|you have|you reach|you reach the|only|the last|the next|within} 3 sts remain → work
      Fancy stitch until {the|there are|you have|you reach|you reach the|only|the last|the next|within} {end|marker} → nothing
      Fancy stitch until {3 st|3 sts|3} → work
      {Then |Now |And |, |* |- |}fancy 3 sts → work
      {Then |Now |And |, |* |- |}{place|slip|leave} on a holder → bids
      {Then|Now|And} place → nothing
      {2 times|less than back to underarm} → nothing
      Fancy{| .} cast on 20 sts → work castsOn asks
      Fancy 20 wibbles of the thing so that it looks like nothing else here at all → nothing
    `),
  )('$line', ({ texts, reading }) => {
    for (const text of texts) expect(known(text), text).toBe(reading);
  });
});
