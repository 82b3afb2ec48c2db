import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a row that turns before its end,', () => {
  it.each(
    table(`
      K14, turn and work on these 14 sts only → row: items 'k ×14, {turn}' | @15 work on: which these, stitches 14
      {K14, turn, work on these 14 sts|K14, turn, work with these 14 sts|K14, turn, working on these 14 sts|K14, turn, working with these 14 sts|K14, turn, continue on these 14 sts|K14, turn, continue with these 14 sts|K14, turn, cont to work on these 14 sts|K14, turn, cont to work with these 14 sts|K14, turn; work on these 14 sts|K14, turn; work with these 14 sts|K14, turn; working on these 14 sts|K14, turn; working with these 14 sts|K14, turn; continue on these 14 sts|K14, turn; continue with these 14 sts|K14, turn; cont to work on these 14 sts|K14, turn; cont to work with these 14 sts} → row: items 'k ×14, {turn}' | @12 work on: which these, stitches 14
      {K14, turn, work over the first 14 sts|K14, turn, working over the first 14 sts|K14, turn, continue over the first 14 sts|K14, turn, cont to work over the first 14 sts|K14, turn; work over the first 14 sts|K14, turn; working over the first 14 sts|K14, turn; continue over the first 14 sts|K14, turn; cont to work over the first 14 sts} → row: items 'k ×14, {turn}' | @12 work on: which first, stitches 14
      {K14, turn, work on last 14 sts|K14, turn, working on last 14 sts|K14, turn, continue on last 14 sts|K14, turn, cont to work on last 14 sts|K14, turn; work on last 14 sts|K14, turn; working on last 14 sts|K14, turn; continue on last 14 sts|K14, turn; cont to work on last 14 sts} → row: items 'k ×14, {turn}' | @12 work on: which last, stitches 14
      {K14, turn and work on these 14 sts|K14, turn and work with these 14 sts|K14, turn and working on these 14 sts|K14, turn and working with these 14 sts|K14, turn and continue on these 14 sts|K14, turn and continue with these 14 sts|K14, turn and cont to work on these 14 sts|K14, turn and cont to work with these 14 sts} → row: items 'k ×14, {turn}' | @15 work on: which these, stitches 14
      {K14, turn and work over the first 14 sts|K14, turn and working over the first 14 sts|K14, turn and continue over the first 14 sts|K14, turn and cont to work over the first 14 sts} → row: items 'k ×14, {turn}' | @15 work on: which first, stitches 14
      {K14, turn and work on last 14 sts|K14, turn and working on last 14 sts|K14, turn and continue on last 14 sts|K14, turn and cont to work on last 14 sts} → row: items 'k ×14, {turn}' | @15 work on: which last, stitches 14
      {K14, turn, and work on these 14 sts|K14, turn, and work with these 14 sts|K14, turn, and working on these 14 sts|K14, turn, and working with these 14 sts|K14, turn, and continue on these 14 sts|K14, turn, and continue with these 14 sts|K14, turn, and cont to work on these 14 sts|K14, turn, and cont to work with these 14 sts} → row: items 'k ×14, {turn}' | @16 work on: which these, stitches 14
      {K14, turn, and work over the first 14 sts|K14, turn, and working over the first 14 sts|K14, turn, and continue over the first 14 sts|K14, turn, and cont to work over the first 14 sts} → row: items 'k ×14, {turn}' | @16 work on: which first, stitches 14
      {K14, turn, and work on last 14 sts|K14, turn, and working on last 14 sts|K14, turn, and continue on last 14 sts|K14, turn, and cont to work on last 14 sts} → row: items 'k ×14, {turn}' | @16 work on: which last, stitches 14
      K14, turn{,|;} {proceed|continue|work} as follows → row: items 'k ×14, {turn}' | @12 note: about aside
      K to last 8 sts, turn; p to last 8 sts, turn → row: items 'k to {left 8}, {turn}' | @24 row: items 'p to {left 8}, {turn}'
      {K to last 8 sts, turn, sl 1, p to last 8 sts, turn|K to last 8 sts, turn; sl 1, p to last 8 sts, turn} → row: items 'k to {left 8}, {turn}' | @24 row: items 'sl, p to {left 8}, {turn}'
      {K to last 8 sts, turn, p to last 8 sts, turn|K to last 8 sts, turn; p to last 8 sts, turn} → row: items 'k to {left 8}, {turn}' | @24 row: items 'p to {left 8}, {turn}'
      {K to last 8 sts, turn, k to last 8 sts, turn|K to last 8 sts, turn; k to last 8 sts, turn} → row: items 'k to {left 8}, {turn}' | @24 row: items 'k to {left 8}, {turn}'
      {K to last 8 sts, turn, work to last 8 sts, turn|K to last 8 sts, turn, rib to last 8 sts, turn|K to last 8 sts, turn; work to last 8 sts, turn|K to last 8 sts, turn; rib to last 8 sts, turn} → row: items 'k to {left 8}, {turn}' | @24 row: items 'patt to {left 8}, {turn}'
      K to last 8 sts, turn and sl 1, p to last 8 sts, turn → row: items 'k to {left 8}, {turn}' | @27 row: items 'sl, p to {left 8}, {turn}'
      K to last 8 sts, turn and p to last 8 sts, turn → row: items 'k to {left 8}, {turn}' | @27 row: items 'p to {left 8}, {turn}'
      K to last 8 sts, turn and k to last 8 sts, turn → row: items 'k to {left 8}, {turn}' | @27 row: items 'k to {left 8}, {turn}'
      {K to last 8 sts, turn and work to last 8 sts, turn|K to last 8 sts, turn and rib to last 8 sts, turn} → row: items 'k to {left 8}, {turn}' | @27 row: items 'patt to {left 8}, {turn}'
      K to within 8 sts of end, turn, p to end → row: items 'k to {left 8}, {turn}' | @33 row: items 'p to {left 0}'
      K until 8 sts rem, turn, p to end → even: fabric {knit on}, until {count, stitches 8} | @20 turn | @26 row: items 'p to {left 0}'
      K 14, turn, p 14 → row: items 'k ×14, {turn}, p ×14'
      K 14, turn → row: items 'k ×14, {turn}'
      Turn → turn
      Turn, k 5 → turn | @7 row: items 'k ×5'
      K 22, bind off 22 sts and {start|begin} {front|back|the front} {on|with|over|over the} rem 22 sts → row: items 'k ×22, bo ×22' | @27 work on: which these, stitches 22
      K 22, bind off 22 sts and start hat on rem 22 sts → ✗ stitch or repeat expected @27
      Place 5 sts on holder, turn, p to end → hold: which all, stitches 5 | @24 turn | @30 row: items 'p to {left 0}'
      K to last 8 sts, place them on holder, turn, p to end → row: items 'k to {left 8}, {parting}, {turn}, p to {left 0}'
      K to last 8 sts, turn p to end → row: items 'k to {left 8}, {turn}, p to {left 0}'
    `),
  )('ends there, and what goes on is said behind it: $line', expectReading);
});
