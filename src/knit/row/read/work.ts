import { allOf } from './counted-edge.ts';
import { ahead, attempt, type Cursor, isWord, peek, seesPhrase, takeAnyPhrase, takes } from './cursor.ts';
import { readCount, readGoal, takeSts } from './goal.ts';
import type { FabricInRow } from './notation.ts';
import { counted, type ReadItem } from './plain.ts';

/** 'work row 1 of cable panel over next 12 sts', 'cable pattern on 12 sts': without 'work' it is called a pattern. */
export const readPanel = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    let panel = takes(c, 'work', 'working');
    for (let far = 0; far < 9 && peek(c)?.kind !== 'mark' && peek(c) !== undefined; far += 1) {
      if (far > 0 && panel && takes(c, 'over', 'across', 'on')) {
        const n = readCount(c);
        if (n !== undefined && takeSts(c))
          return { item: { is: 'stitches', work: 'patt', times: n, panel: true } };
        break;
      }
      if (isWord(peek(c), 'multiple')) break;
      panel ||= far > 0 && isWord(peek(c), 'patt', 'panel', 'chart');
      c.at += 1;
    }
  });

/** 'work 12 sts', 'work in pattern to last 3 sts', 'patt 5', 'rib to end'. */
export const readWork = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    const start = c.at;
    const panel = readPanel(c);
    if (panel) return panel;
    // 'yarn in back' works nothing
    if (seesPhrase(c, 'in back|front')) return undefined;
    if (!takes(c, 'work', 'working', 'patt', 'rib', 'cont', 'in', 'keeping', 'as')) return undefined;
    skipEstablished(c);
    const stocking = attempt(
      c,
      () => takeAnyPhrase(c, 'in? st st') && ahead(c, () => readGoal(c) !== undefined),
    );
    const rib = isWord(c.tokens[start], 'rib') ? { rib: true } : {};
    const named = () => (stocking ? ({ fabric: 'stocking' } as const) : fabricSaid(c, start));
    const beside = readBesideGap(c);
    if (beside !== undefined) return { item: { is: 'stitches', work: 'patt', times: beside, ...rib } };
    const goal = readGoal(c);
    if (goal) {
      skipEstablished(c);
      return { item: { is: 'stitches to', work: 'patt', goal, ...rib, ...named() } };
    }
    // 'work twice into the next st'
    if (takeAnyPhrase(c, 'twice in|into the? next|same|first|last st')) return counted('inc', 1);
    const n = readCount(c);
    // 'work 2 tog', 'rib 2 tog', 'patt 3 tog'
    if ((n === 2 || n === 3) && takes(c, 'tog')) return counted(n === 2 ? 'dec' : 'dec 2', 1);
    if (n !== undefined) {
      const sts = takeSts(c);
      const styled = skipEstablished(c);
      const bare = isWord(c.tokens[start], 'patt', 'rib', 'work');
      if ((sts || styled || bare) && !seesPhrase(c, 'row|rows|rnds|rnd|more|cm|inch|in|back'))
        return { item: { is: 'stitches', work: 'patt', times: n, ...rib, ...named() } };
    } else if (c.at - start >= 2 || c.tokens[start]?.text === 'patt') {
      return { item: allOf('patt') };
    }
  });

/** 'bind off 8 sts, complete row in pattern': its rest is worked. */
export const readRestOfRow = (c: Cursor): ReadItem | undefined => {
  if (!takeAnyPhrase(c, 'complete|finish the? row')) return undefined;
  skipEstablished(c);
  return { item: allOf('patt') };
};

/** 'work 6 sts in garter st': the fabric that the words name. */
function fabricSaid(c: Cursor, start: number): { readonly fabric?: FabricInRow } {
  const fabric = FABRICS.find((name) => c.tokens.slice(start, c.at).some((one) => isWord(one, name)));
  return fabric === undefined ? {} : { fabric };
}

const FABRICS: readonly FabricInRow[] = ['garter', 'moss', 'stocking'];

const ESTABLISHED = [
  'in patt st',
  'in patt|rib|pats',
  'in est|same|this patt|rib',
  'in patt as set|est|before',
  'as set|est|before|usual',
  'in garter|moss|stocking st',
  'even',
  'patt',
  'keeping to|in patt',
  'keeping continuity of patt',
  'correct',
  'straight',
];

function skipEstablished(c: Cursor): boolean {
  let any = false;
  while (takeAnyPhrase(c, ...ESTABLISHED)) any = true;
  return any;
}

/** 'rib until 12 sts on needle after gap': the stitch that is left after a bind-off is the first of them. */
const readBesideGap = (c: Cursor): number | undefined =>
  attempt(c, () => {
    const n = takes(c, 'until') ? readCount(c) : undefined;
    return n !== undefined && takeSts(c) && takeAnyPhrase(c, 'on needle after gap') ? n : undefined;
  });
