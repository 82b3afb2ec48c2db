import { describe, expect, it } from 'vitest';
import { meantBehind } from '../../../../src/knit/pattern/text/size-names.ts';
import { pickSizes, sizesSaid } from '../../../../src/knit/pattern/text/size-scope.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';

/** For which sizes something is, as leaflets say it: common practice, no published source. */
const names = ['S', 'M', 'L'];
const words = (tokens: ReturnType<typeof lex>) =>
  tokens.map(({ kind, value, text }) => (kind === 'number' ? String(value) : text)).join(' ');

describe('sizes that are named before an order', () => {
  const said = (text: string) => {
    const found = sizesSaid(lex(text), names);
    return found && `${found.sizes.map((i) => names[i]).join(' ')}${found.alone ? ', alone' : ''}`;
  };

  it.each([
    ['Sizes M and L only: k 20', 'M L'],
    ['Size S only: k 20', 'S'],
    ['For size L only: k 20', 'L'],
    ['Sizes S, M and L only: k 20', 'S M L'],
    ['Size L only:', 'L, alone'],
    ['Size L only', 'L, alone'],
    ['K 20 for all', undefined],
  ])('%s', (text, wanted) => {
    expect(said(text)).toBe(wanted);
  });

  const picked = (text: string) =>
    names.map((_, size) => words([...pickSizes(lex(text), { size, sizes: 3, names }, undefined).tokens]));

  it('have lists as long as they are many, up to the end of their sentence and of the count behind it', () => {
    expect(
      picked('Sizes M and L only: k 20 (22) sts. P 3 (4, 5). Bind off').map((one) =>
        one.slice('sizes m and l only : '.length),
      ),
    ).toEqual(['k sts . p 3 . bind off', 'k 20 sts . p 4 . bind off', 'k 22 sts . p 5 . bind off']);
    expect(
      picked('Sizes M and L only: k 20 (22). (30 (32) sts). P 3 (4, 5)').map((one) =>
        one.slice('sizes m and l only : '.length),
      ),
    ).toEqual(['k . ( sts ) . p 3', 'k 20 . ( 30 sts ) . p 4', 'k 22 . ( 32 sts ) . p 5']);
  });

  it('are asked anew for each sentence', () => {
    expect(picked('Bind off 3 (4, 5). Size L only: k 20. Sizes S and L only: k 4 (6)')).toEqual([
      'bind off 3 . size l only : k 20 . sizes s and l only : k 4',
      'bind off 4 . size l only : k 20 . sizes s and l only : k',
      'bind off 5 . size l only : k 20 . sizes s and l only : k 6',
    ]);
    expect(picked('K only 3 (4, 5) sts')).toEqual(['k only 3 sts', 'k only 4 sts', 'k only 5 sts']);
  });
});

describe('sizes that are named behind an order', () => {
  const behind = (text: string) => {
    const tokens = lex(text);
    const found = names.map((_, size) => meantBehind(tokens, names, size));
    const left = found[0] && words(tokens.slice(0, found[0].to));
    return left && `${names.filter((_, i) => found[i]?.meant).join(' ')}: ${left}`;
  };

  it.each([
    ['Dec 1 st at each end [size L only]', 'L: dec 1 st at each end'],
    ['Dec 1 st at each end (size L only).', 'L: dec 1 st at each end'],
    ['Dec 1 st [for size L only].', 'L: dec 1 st'],
    ['Dec 1 st for size L only', 'L: dec 1 st'],
    ['Dec 1 st for L size only', 'L: dec 1 st'],
    ['Dec 1 st (sizes S and L only)', 'S L: dec 1 st'],
    ['K [size L only: k 2], p 2 [size M only]', 'M: k [ size l only : k 2 ] , p 2'],
  ])('are those meant, and it is read up to there: %s', (text, wanted) => {
    expect(behind(text)).toBe(wanted);
  });

  it.each([
    ['Dec 1 st (sizes S and M only) again'],
    ['[size L only]'],
    ['for size L only'],
    ['Dec 1 st [last row only]'],
    ['Dec 1 st only'],
    ['Dec 1 st for the neck'],
  ])('are none: %s', (text) => {
    expect(behind(text)).toBeUndefined();
  });
});
