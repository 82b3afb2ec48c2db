import { expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

it.each([
  ['no heading names', 'FRONT\nWork as for back.\n'],
  ['a heading names, with nothing below it', 'BACK\n\nFRONT\nWork as for back.\n'],
])('a piece that is worked as one that %s is not known', (_, text) => {
  const faults = readPattern(text).lines.flatMap((line) => line.faults.map(({ code }) => code));
  expect(faults).toEqual(['piece not known']);
});
