import { describe, expect, it } from 'vitest';
import { lex, type Token } from '../../../../src/knit/row/read/lex.ts';

/** Texts of tokens; a number with its value, '+' before one that is glued, a capital with '^'. */
const said = (text: string): string =>
  lex(text)
    .map((t) => `${t.glued ? '+' : ''}${t.capital ? '^' : ''}${t.kind === 'number' ? `#${t.value}` : t.text}`)
    .join(' ');

describe('a text as words, numbers and marks', () => {
  it.each([
    ['k2, p2', 'k +#2 +, p +#2'],
    ['K2tog', '^k +#2 +tog'],
    ['Row 1 (RS): Purl', '^row #1 ( +^rs +) +: ^purl'],
    ['½ 1½ ¼ 2¾ ⅓ ⅔', '#0.5 #1.5 #0.25 #2.75 #0.3333333333333333 #0.6666666666666666'],
    ['⅛ ⅜ ⅝ ⅞', '#0.125 #0.375 #0.625 #0.875'],
    ['3.5 12. 7', '#3.5 #12 +. #7'],
    ['3.x', '#3 +. +x'],
    ['five twelve', '#5 #12'],
    ['one two three four five six seven eight nine ten', '#1 #2 #3 #4 #5 #6 #7 #8 #9 #10'],
    ['eleven twelve thirteen fourteen fifteen sixteen', '#11 #12 #13 #14 #15 #16'],
    ['seventeen eighteen nineteen twenty thirty forty', '#17 #18 #19 #20 #30 #40'],
    ['fifty sixty seventy eighty ninety', '#50 #60 #70 #80 #90'],
    ['a–b — c−d', 'a +- +b - c +- +d'],
    ['∗k1★ ＊', '* +k +#1 +* *'],
    ['4" 5” 6″', '#4 +" #5 +" #6 +"'],
    ['3 × 4✕', '#3 × #4 +×'],
    ['don’t *’s', 'don +t * +s'],
    ["inc'ing 1 Dec’ing 1 in'g", 'incing #1 ^decing #1 in +g'],
    ['p.s.s.o. now', 'psso now'],
    ['K. 2, P. 2.', '^k #2 +, ^p #2 +.'],
    ['sts. St. st', 'sts +. ^st st'],
    ['inc. 1 st', 'inc #1 st'],
    ['k2tog. 39 sts', 'k +#2 +tog +. #39 sts'],
    ['No. 8', '^no #8'],
    ['rep. Next', 'rep +. ^next'],
    ['Häkelrand ß', '^häkelrand ß'],
    ['3÷4 5×6', '#3 +÷ +#4 #5 +× +#6'],
    ['a\u00a0b a\u2003b', 'a b a b'],
    ['a\u200bb\u00ad', 'a +b'],
    ['\ufeffk2', 'k +#2'],
    ['', ''],
    ['a‘b `c ‘d’', 'a +b c d'],
    ['k! p', 'k +! p'],
    ['3.75 3.5.', '#3.75 #3.5 +.'],
    ['inc.            1 st', 'inc #1 st'],
    ['az AZ 0 19 20', 'az ^az #0 #19 #20'],
    ['a@b [c` {d ~ /e:', 'a +@ +b [ +c { +d ~ / +e +:'],
    ['k¿ À ÿ Ж λ 、 ！ № m²', 'k +¿ à ÿ ж λ 、 ！ № m +²'],
    ['a\u0308b x\u{1f9f6}', 'a\u0308b x\u{1f9f6}'],
    ['p.s.s.o k.f.b. x p.s.so', 'psso kfb +. x ps +. +so'],
    ['k\n p', 'k p'],
  ])('%s', (text, tokens) => {
    expect(said(text)).toBe(tokens);
  });

  /* Unicode’s general punctuation and mathematical operators, and their wide forms. */
  it.each([
    ['-', '\u002d \u2010 \u2011 \u2012 \u2013 \u2014 \u2015 \u2212'],
    ['*', '\u002a \u2217 \uff0a \u2605 \u2731'],
    ['"', '\u0022 \u201c \u201d \u2033'],
  ])('every writing of %s', (mark, all) => {
    for (const one of all.split(' ')) expect([one, said(`k${one}p`)]).toEqual([one, `k +${mark} +p`]);
  });

  it('apostrophes and what has no width part words without a mark', () => {
    for (const one of ['\u0027', '\u2019', '\u2018', '\u0060', '\u00ad', '\u200b', '\ufeff'])
      expect([one, said(`k${one}2`)]).toEqual([one, 'k +#2']);
  });

  it('each knows its line, its column and where it begins', () => {
    const at = ({ text, line, column, offset }: Token) => [text, line, column, offset];
    expect(lex('k2,\n  p 3\nx').map(at)).toEqual([
      ['k', 1, 1, 0],
      ['2', 1, 2, 1],
      [',', 1, 3, 2],
      ['p', 2, 3, 6],
      ['3', 2, 5, 8],
      ['x', 3, 1, 10],
    ]);
    expect(lex('k 2', 7, 5).map(at)).toEqual([
      ['k', 7, 5, 0],
      ['2', 7, 7, 2],
    ]);
  });

  it('a word has the trade’s word for it, a number none', () => {
    expect(lex('stitches Repeat 5 wibble').map(({ text, word }) => [text, word])).toEqual([
      ['stitches', 'sts'],
      ['repeat', 'rep'],
      ['5', '5'],
      ['wibble', 'wibble'],
    ]);
    expect(lex('k 5').map(({ value }) => value)).toEqual([Number.NaN, 5]);
  });
});
