import { describe, expect, it } from 'vitest';
import { table } from '../table.ts';
import { reading } from './said.ts';

/**
 * Rarer ways of saying stitches within a row: slips and where the yarn lies, ribs over so many stitches, wraps, holders, crossings
 * and colors; common practice, no published source. A word that goes, or stands for another, turns a line red.
 */
describe('within a row', () => {
  it.each(
    table(`
      {Bind off|Bind of|Cast of|Cast off|B o|Boff|Bo|Bind-off} 5 sts, k2 → row: items 'bo ×5, k ×2'
      3 times (k2, wibble), k2 → ✗ stitch or repeat expected @14
      3 times (k2, p1), k2 → row: items '(k ×2, p) ×3, k ×2'
      K 10 (k2, wibble) 3 times, k2 → ✗ stitch or repeat expected @11
      *k2, (k1, wibble) twice; rep from * to end → ✗ stitch or repeat expected @11
      K 10 (k2, p2 3 times, k2 → ✗ bracket expected )
      K 10, k1, p1 over {the|} {next|first|last|} 6 sts, k10 → row: items 'k ×10, (k, p) ×3, k ×10'
      K 10, p1, k1 over next 7 sts, k10 → row: items 'k ×10, (p, k) ×3, p, k ×10'
      K 10, k1, p1 rib to last 10 sts, k10 → row: items 'k ×10, (k, p) to {left 10}, k ×10'
      K to end, {working|picking up|lifting|hiding|knitting} {all|the|each|every|} {wraps|wrap} tog with sts{.|,|;|} → row: items 'k to {left 0}, picking up each wrap'
      K to last st (leave last st unworked), turn → row: items 'k to {left 1}, {turn}'
      K to last st ({leave|leaving} {last st|1 st|st} unworked), turn → row: items 'k to {left 1}, {turn}'
      Sl {m|marker}, k2 → row: items '{marker, does slip}, k ×2'
      Sl {the|} {next|first|last} st, k2 → row: items 'sl, k ×2'
      Sl {the|} {next|first|last} 2 sts, k2 → row: items 'sl ×2, k ×2'
      Sl 1, k1, {psso|pass slipped st over|pass sl st over|pass the slipped st over}, k2 → row: items 'skp, k ×2'
      Sl 1, k2tog, psso, k2 → row: items 'sk2p, k ×2'
      K2tog {tbl|b|in back of loop|in back of sts}, k2 → row: items 'k2tog tbl, k ×2'
      {K2 tog, k2|K2 sts tog, k2} → row: items 'k2tog, k ×2'
      {K2 togtbl, k2|K2 tog tbl, k2} → row: items 'k2tog tbl, k ×2'
      K tog, k2 → row: items 'k2tog, k ×2'
      {K next st, k2|K st, k2|K a st, k2} → row: items 'k, k ×2'
      K next st tbl, k2 → row: items 'k tbl, k ×2'
      K {fb|f and b|into front and back of next st|in front and back of next st|twice in next st|twice into the next st|twice in each st|twice into same st}, k2 → row: items 'kfb, k ×2'
      P {fb|into front and back of next st|twice in next st}, k2 → row: items 'pfb, k ×2'
      K1 {f and b|fb|f/b|f b|f-b|into front and back|into back and front}, k2 → row: items 'kfb, k ×2'
      K12 {from|off} {st|the|a|back|front|} holder → row: items 'take ×12'
      K12 {from|off} the st holder → row: items 'take ×12'
      {Take up|Sl|Return|Replace|Put|Place} 12 sts {from|off} {the|a|st|} holder{ onto needle| to needle| back onto needle| onto the needle|}, k2 → row: items 'take ×12, k ×2'
      K12, leave {center|rem} 10 sts unworked → row: items 'k ×12, unworked ×10'
      C6B, k2 → row: items 'c6b, k ×2'
      C4F, k2 → row: items 'c4f, k ×2'
      C8B, k2 → row: items 'c8b, k ×2'
      Sl {next|} 3 sts {onto|on|to} cn{,| and} {hold|leave|place|put|keep} it in front, k3, k3 from cn → row: items c6f
      Sl next 3 sts onto cn, hold {it|them|} {in|at|to} {the|} front {of work|}, k3, k3 from cn → row: items c6f
      Sl {next|} 3 sts {onto|on|to} cn{,| and} {hold|leave|place|put|keep} it in back, k3, k3 from cn → row: items c6b
      Sl next 3 sts onto cn, hold {it|them|} {in|at|to} {the|} back {of work|}, k3, k3 from cn → row: items c6b
      Sl 2 sts onto cable needle and hold in front, p1, k2 from cn → row: items '2/1 lpc'
      Sl 1 st onto dpn and hold at back, k2, p1 from dpn → row: items '2/1 rpc'
      {With|Using|In} B{,|:|} k2 → yarn: name B | row: items 'k ×2'
      K to end, {working|keeping|matching} {the|} {colors|colours} {as set|as est|as before|as they appear|over colors} → row: items 'k to {left 0}', told within
      K to end, working A over A and B over B → row: items 'k to {left 0}', told within
      K 12, turn, {leave|leaving} {rem|the rem|other} sts unworked → row: items 'k ×12, {turn}'
      {Sl|Slip|S} 1 {kwise|pwise|knitwise|purlwise|as if to k|as if to p|as for k|as if knitting}, k2 → row: items 'sl, k ×2'
      {Sl|Slip|S} 1 wyif, k2 → row: items 'sl wyif, k ×2'
      {Sl|Slip|S} 1 {wyib|yib}, k2 → row: items 'sl wyib, k ×2'
      Sl 2 {tog kwise|tog|together}, k1, {p2sso|psso|pass 2 slipped sts over}, k2 → row: items 's2kp, k ×2'
      {Yarn to front|Yf|Wool to front|Bring yarn to front}, sl 1, {yarn to back|yb|wool to back|take yarn to back}, k2 → row: items 'sl wyif, k ×2'
      K1 below, k2 → row: items 'k1 below, k ×2'
      K1 {tbl|b|into back|through back loop}, k2 → row: items 'k tbl, k ×2'
      K12, {place|put|sl|leave} {next|rem} 10 sts on {a|} holder{| for left front| for back neck| for later} → row: items 'k ×12, hold ×10'
      K 2 {with A|using A|using the red wool}, k2 → row: items 'k ×2, k ×2', told within
      K 2 A, k 3 {B|CC} → row: items 'k ×2, k ×3', told within
      K 2 MC, k 3 CC → row: items 'k ×2, k ×3', told within
    `),
  )('$line', ({ texts, reading: wanted }) => {
    for (const one of texts) expect(reading(one).replace(/@\d+ /g, ''), one).toBe(wanted);
  });
});
