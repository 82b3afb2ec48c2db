import { expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

const left = [
  'FRONT',
  'Cast on 40 sts.',
  'Knit 4 rows.',
  'Next row: K18, turn.',
  'On these 18 sts only knit 3 rows. Bind off.',
];

/** Lines on which stitches are told to wait, each with how many. */
const waiting = (...behind: readonly string[]): readonly string[] =>
  readPattern([...left, ...behind].join('\n')).lines.flatMap(({ line, faults }) =>
    faults.flatMap((found) =>
      found.code === 'stitches wait' ? [`${line}: ${JSON.stringify(found.figures)}`] : [],
    ),
  );

it('tells on the line where they were left of stitches that nobody speaks of again', () => {
  expect(waiting()).toEqual(['4: {"stitches":22}']);
  expect(waiting('BACK', 'Cast on 40 sts.', 'Knit 10 rows. Bind off.')).toEqual(['4: {"stitches":22}']);
});

it.each([
  'Rejoin yarn to rem 22 sts and knit 4 rows. Bind off.',
  'Complete other side to match, reversing shaping.',
  'NECKBAND\nPick up and knit 10 sts along the neck and knit across 22 sts left at the front. Knit 2 rows. Bind off.',
  'Sl the 22 sts on a holder.',
  // whoever takes them up in words that are not understood has a mark of her own
  'Twiddle 22 sts back to front 3 times.',
])('says nothing of them where something takes them up: %s', (behind) => {
  expect(waiting(behind)).toEqual([]);
});

it('waits for the rest of a text that stops in the midst of the piece', () => {
  const { lines } = readPattern(left.slice(0, -1).join('\n'));
  expect(lines.flatMap(({ faults }) => faults)).toEqual([]);
});

it('tells of each of two sets', () => {
  const both = readPattern(
    'BACK\nCast on 40 sts.\nKnit 4 rows.\nNext row: K12, bind off 16 sts, k12.\nOn these 12 sts only knit 5 rows. Bind off.',
  );
  expect(both.lines.flatMap(({ line, faults }) => faults.map(({ code }) => `${line} ${code}`))).toEqual([
    '5 stitches wait',
  ]);
});
