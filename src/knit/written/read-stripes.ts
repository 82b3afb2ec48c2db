import type { ReadPattern } from '../pattern/read-pattern.ts';
import { meantFor } from '../pattern/text/size-names.ts';
import { stripeSentence } from '../pattern/text/stripe-sentence.ts';
import { lex } from '../row/read/lex.ts';
import type { Restriped, Stripe } from '../yarn/stripes.ts';

/** Stripes of a make as a text tells them; its piece by the place that it has. */
export type ToldStripes = Omit<Restriped, 'piece'> & { readonly piece: number };

/** In which colours a written pattern has its rows, in the size that was read. */
export function stripesTold(
  read: Pick<ReadPattern, 'lines' | 'pieces' | 'size' | 'sizes'>,
): readonly ToldStripes[] {
  const nth = new Map<string, number>();
  return read.lines.flatMap(({ text }) => {
    const sentence = stripeSentence(text);
    if (!sentence || !isMeant(text, read)) return [];
    const piece = pieceIn(sentence.of, read);
    const recipe = read.pieces[piece]?.recipe;
    if (!recipe) return [];
    const no = /, no\. (\d+)/.exec(sentence.of.slice(recipe.name.length))?.[1];
    // its parts are told in the order in which they are knitted, stitches on a holder are none of them
    const key = `${piece} ${no}`;
    const count = nth.get(key) ?? 0;
    nth.set(key, count + 1);
    const part = knittedParts(read, piece)[count];
    if (part === undefined) return [];
    const makes = no === undefined ? Array.from({ length: recipe.makes }, (_, i) => i + 1) : [Number(no)];
    return stretchesIn(ofSize(sentence.said, read)).flatMap((stretch) =>
      makes.map((make) => ({ piece, make, part, at: 1, ...stretch })),
    );
  });
}

const knittedParts = ({ pieces }: Pick<ReadPattern, 'pieces'>, piece: number): readonly number[] => {
  const plan = pieces[piece]?.plan;
  return plan?.ok ? plan.value.parts.flatMap(({ rows }, i) => (rows.length > 0 ? [i] : [])) : [];
};

/** 'rows 1 to 4 in w; rows 9 to 20: 2 rows in s, 2 rows in n, in turn': each, and where colours end before the next ones begin. */
function stretchesIn(said: string): readonly Pick<ToldStripes, 'row' | 'stripes'>[] {
  const all = said.split(/; (?=rows? [\d–]|(?:bind|cast) off in )/).flatMap((one) => {
    const [, first, last = first, words] = /^rows? (\d+)(?: to (\d+))?(?:: | in )(.+)$/.exec(one) ?? [];
    return words === undefined ? [] : [{ row: Number(first), last: Number(last), stripes: turnIn(words) }];
  });
  return all.flatMap(({ row, last, stripes }, i) => {
    const next = all[i + 1]?.row ?? 0;
    return [{ row, stripes }, ...(next > last + 1 ? [{ row: last + 1, stripes: [] }] : [])];
  });
}

/** '2 rows in woad, 1 row in sand, in turn', or a colour alone. */
function turnIn(words: string): readonly Stripe[] {
  if (!/^\d+ rows? in /.test(words) || !words.endsWith(IN_TURN)) return [{ colour: words, rows: 1 }];
  return words
    .slice(0, -IN_TURN.length)
    .split(/, (?=\d+ rows? in )/)
    .flatMap((stripe) => {
      const [, rows, colour] = /^(\d+) rows? in (.+)$/.exec(stripe) ?? [];
      return colour === undefined ? [] : [{ colour, rows: Number(rows) }];
    });
}

const IN_TURN = ', in turn';

/** The longest name that it begins with. */
function pieceIn(of: string, { pieces }: Pick<ReadPattern, 'pieces'>): number {
  const said = of.toLowerCase();
  const isOf = (name: string) => said === name || said.startsWith(`${name},`);
  const found = pieces
    .map(({ recipe }, i) => ({ name: recipe.name.toLowerCase(), i }))
    .filter(({ name }) => isOf(name))
    .sort((a, b) => b.name.length - a.name.length);
  return found[0]?.i ?? -1;
}

const isMeant = (text: string, { size, sizes }: Pick<ReadPattern, 'size' | 'sizes'>): boolean =>
  sizes.length < 2 || meantFor(lex(text), sizes, size).meant;

/** '12 (14, 16)' as the size has it. */
const ofSize = (said: string, { size, sizes }: Pick<ReadPattern, 'size' | 'sizes'>): string =>
  said.replace(/(\d+|–) \(((?:\d+|–)(?:, (?:\d+|–))*)\)/g, (whole, first: string, rest: string) => {
    const all = [first, ...rest.split(', ')];
    return all.length === sizes.length ? (all[size] ?? whole) : whole;
  });
