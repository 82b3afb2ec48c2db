import { expect, it } from 'vitest';
import { readSentence } from '../../../../src/knit/pattern/say/sentence.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';

/** How rows to come are worked is an order that no row is made of. Common practice, no published source. */
const isOrder = (text: string): boolean => {
  const tokens = lex(text);
  const { order, beside } = readSentence(tokens, { from: 0, to: tokens.length }, true);
  return order === true && beside === true;
};

const rows = ['all', 'every', 'each'].flatMap((which) =>
  ['RS', 'WS', 'alt', 'even', 'odd', 'right side', 'wrong side', 'other RS', 'other WS'].flatMap((of) =>
    ['row', 'rows'].map((row) => `${which} ${of} ${row}`),
  ),
);

it.each(['On ', 'Work ', ''])('%s… rows, as each of them is called, is an order', (lead) => {
  const ends = [
    ': k 4, p to end',
    ', k 4, p to end',
    ' as k 4, p to end',
    ' in garter st',
    ' k 4, p to end',
    ' p to end',
  ];
  const texts = rows.flatMap((row) => ends.map((end) => `${lead}${row}${end}`));
  expect(texts.filter((text) => !isOrder(text))).toEqual([]);
});

it('in brackets it is one too, and with rows to work it is none', () => {
  for (const which of ['all', 'every', 'each'])
    for (const side of ['RS', 'WS'])
      for (const row of ['row', 'rows'])
        for (const lead of ['work', 'on'])
          expect(isOrder(`(${lead} ${which} ${side} ${row}: k to end)`)).toBe(true);
  for (const none of [
    'On all WS rows k rows',
    'On all WS rows p row',
    'On next row: k 4',
    'Work 6 rows',
    'All sts: k 4',
  ])
    expect(isOrder(none), none).toBe(false);
});
