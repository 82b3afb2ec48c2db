import { expect, it } from 'vitest';
import { lex } from '../../../src/knit/row/read/lex.ts';
import { sentenceAt } from '../../../src/knit/written/making-up-sentences.ts';
import {
  BEHIND_TITLE,
  figured,
  laps,
  lengthWords,
  loops,
  plain,
  raglanLines,
  titles,
  ways,
} from '../../../src/knit/written/making-up-table.ts';
import { fill } from '../../../src/knit/written/template.ts';

const [length = ''] = Object.keys(lengthWords);

/** Something for every place of every sentence. */
const any: Readonly<Record<string, string | number>> = {
  percent: 88,
  ...Object.fromEntries(
    ['times', 'first', 'second', 'every', 'total', 'stitches', 'rows'].map((slot, i) => [slot, i + 5]),
  ),
  list: '4 / 8 / 12',
  width: `45.5 ${length} / 18 in`,
  height: `30 ${length}`,
  unit: 'rows',
  side: 'left',
  line: 'right front',
  off: 'cast off',
  offing: 'binding off',
};
const nameless = {
  piece: 'left front',
  band: 'neckband',
  of: 'back',
  on: 'button band',
  a: 'back',
  b: 'sleeve',
};

it('every sentence of the table is written, and read as itself with its figures', () => {
  const tables = {
    title: titles,
    way: ways,
    plain,
    raglan: raglanLines,
    lap: laps,
    loop: loops,
    said: figured,
  };
  for (const [prefix, table] of Object.entries(tables))
    for (const [key, template] of Object.entries<string>(table)) {
      const values = { edge: 'back neck', ...any, ...nameless };
      const behind =
        prefix === 'title' ? `${fill(BEHIND_TITLE.nos, { nos: '1, 2' })}${BEHIND_TITLE.colon}` : '';
      const said = `${fill(template, values)}${behind}`;
      expect(said).not.toMatch(/[{}[\]]/);
      const found = sentenceAt(lex(said), 0);
      // two ways of raglan lines are said alike
      if (key !== 'one has an opening') expect(found?.key, said).toBe(`${prefix} ${key}`);
      expect(found?.to, said).toBe(lex(said).length);
      for (const [slot, value] of Object.entries(found?.values ?? {}))
        if (typeof value === 'number' && !/width|height/.test(slot)) expect(value, said).toBe(any[slot]);
    }
});

it('what may be left out is left out where it has no figure', () => {
  expect(fill(titles.block, { piece: 'back' })).toBe('Block back');
  expect(fill(titles.block, { piece: 'sleeve', times: 2 })).toBe('Block sleeve, 2 times');
  expect(fill(figured.edges, { first: 60, second: 62, unit: 'rows', every: 30 })).toBe(
    '60 rows to 62 rows, one more of the longer edge after every 30.',
  );
});

it('a length is read in mm, by the first of its two units', () => {
  const found = sentenceAt(lex('18 in / 45.5 cm wide, 30 cm high.'), 0);
  expect(found?.values).toEqual({ width: 18 * 25.4, height: 300 });
});

it('one of several words is the one that stands there, whole', () => {
  for (const off of ['bound off', 'cast off'])
    expect(sentenceAt(lex(fill(figured.underarm, { stitches: 6, off })), 0)?.values).toEqual({
      stitches: 6,
      off,
    });
});

it('either side is read as itself', () => {
  const title = `${fill(BEHIND_TITLE.nos, { nos: '1' })}${BEHIND_TITLE.colon}`;
  for (const side of ['left', 'right'])
    for (const said of [
      `${fill(titles['one shoulder'], { side })}${title}`,
      fill(figured['a shoulder waits'], { side }),
    ])
      expect(sentenceAt(lex(said), 0)?.values.side, said).toBe(side);
});
