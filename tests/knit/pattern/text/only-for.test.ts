import { expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

/** A line for some sizes in the wording of leaflets; common practice, no published source. */
const text = `Sizes: S (2X, 12 months, Anna Lind)

BACK
Cast on 20 (24, 28, 32) sts.
Size S only: Row 1 (RS): k1, ssk, knit to end. (19 sts)
Sizes 2X and 12 months only: Row 1 (RS): knit.
Size Anna Lind only: Row 1 (RS): purl. (32 sts)
Row 2 (WS): purl.
Sizes S and Anna Lind only: Rep row 2 1 (–, –, 2) times more. (19 (–, –, 32) sts)
Row 3 (3, 3, 4) (RS): bind off all sts.`;

it.each([
  [0, ['ssk', 'p', 'p', 'bo']],
  [1, ['k', 'p', 'bo']],
  [2, ['k', 'p', 'bo']],
  [3, ['p', 'p', 'p', 'p', 'bo']],
] as const)(
  'a row for some sizes only, names of several words among them, is read whole for those: size %i',
  (size, rows) => {
    const [piece] = readPattern(text, { size }).pieces;
    const made = piece?.plan;
    if (!made?.ok) throw new Error('not read');
    const works = made.value.parts[0]?.rows.map(({ steps }) =>
      steps.some((step) => 'work' in step && step.work === 'ssk')
        ? 'ssk'
        : steps[0] && 'work' in steps[0]
          ? steps[0].work
          : '',
    );
    expect(works).toEqual(rows);
  },
);
