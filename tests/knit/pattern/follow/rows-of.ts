import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { printRow } from '../../../../src/knit/row/print.ts';

/** Side, words and count of each row of a text; 'own' where it stays in its own words. */
export const rowsOf = (...text: readonly string[]): readonly string[] =>
  readPattern(text.join('\n')).lines.flatMap((line) =>
    line.rows.map(
      ({ side, steps, own, after }) => `${side} ${own === undefined ? printRow(steps) : 'own'} ${after}`,
    ),
  );
