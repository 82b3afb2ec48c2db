import { expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

const sides = (text: string): string => {
  const { lines } = readPattern(text);
  const faults = lines.flatMap((line) => line.faults.map(({ code }) => code));
  return [...lines.flatMap(({ rows }) => rows.map(({ side }) => side)), ...faults].join(' ');
};

/** A count of rows and the side of the last one tell the side of the first: common practice, no published source. */
it.each([
  ['Work 3 rows in st st, ending with a WS row.', 'WS RS WS'],
  ['Work 4 rows in st st, ending with a WS row.', 'RS WS RS WS'],
  ['Work 3 rows in st st, ending with a RS row.', 'RS WS RS'],
  ['Work 4 rows in st st, ending with a RS row.', 'WS RS WS RS'],
  ['Work 4 rows in st st.', 'RS WS RS WS'],
])('rows behind a cast-on begin on the side that lets them end as is said: %s', (said, wanted) => {
  expect(sides(`Back\nCast on 20 sts.\n${said}\n`)).toBe(wanted);
});
