/**
 * What the words of a row mean, written apart from the program's own list of stitches, so that a fault in the one is
 * seen by the other. Counts: Begin to Knit, Star Book No. 201, American Thread Co. (PG 61105), pp. 9–11; Handbook of
 * Wool Knitting and Crochet, 1918 (PG 26113), lesson; Miss Lambert, My Knitting Book, 1843 (PG 33502), terms.
 * Leans: R. Gibbs, Right and left leaning decreases, rachelgibbs.co.uk (k2tog and p2tog right; skp, ssk and ssp left;
 * a decrease leans the same way seen from its back); sl1-k2tog-psso left: Tin Can Knits, 6 June 2014; m1l and m1r:
 * Barry Klein's rule at ktslowcloset.com, 23 July 2014; s2pp upright on the other side: Purl Soho, 'Slip Slip Purl Pass'. What none of them has is common practice.
 */
export interface Meaning {
  /** loops taken from the left needle, and new ones left on the right */
  readonly takes: number;
  readonly makes: number;
  /** how the new loops look from the side on which they are worked; undefined: as the loop looked before, or not told */
  readonly looks?: Looks;
  readonly leans?: 'left' | 'right';
  readonly is?: 'plain' | 'slipped' | 'left' | 'bound off' | 'held' | 'cast on' | 'crossed' | 'dropped';
}

export type Looks = 'knit' | 'purl';

const decrease = (takes: number, looks: Looks, leans?: 'left' | 'right'): Meaning =>
  leans ? { takes, makes: 1, looks, leans } : { takes, makes: 1, looks };
const increase = (takes: number, makes: number, looks: Looks = 'knit'): Meaning => ({ takes, makes, looks });

const known: Readonly<Record<string, Meaning>> = {
  k: { takes: 1, makes: 1, looks: 'knit', is: 'plain' },
  p: { takes: 1, makes: 1, looks: 'purl', is: 'plain' },
  'k tbl': { takes: 1, makes: 1, looks: 'knit' },
  'p tbl': { takes: 1, makes: 1, looks: 'purl' },
  'k1 below': { takes: 1, makes: 1, looks: 'knit' },
  'p1 below': { takes: 1, makes: 1, looks: 'purl' },
  sl: { takes: 1, makes: 1, is: 'slipped' },
  'sl wyif': { takes: 1, makes: 1, is: 'slipped' },
  'sl wyib': { takes: 1, makes: 1, is: 'slipped' },
  patt: { takes: 1, makes: 1 },
  mb: { takes: 1, makes: 1 },
  unworked: { takes: 1, makes: 1, is: 'left' },
  k2tog: decrease(2, 'knit', 'right'),
  k3tog: decrease(3, 'knit', 'right'),
  k4tog: decrease(4, 'knit', 'right'),
  k5tog: decrease(5, 'knit', 'right'),
  p2tog: decrease(2, 'purl', 'right'),
  p3tog: decrease(3, 'purl', 'right'),
  p4tog: decrease(4, 'purl', 'right'),
  p5tog: decrease(5, 'purl', 'right'),
  ssk: decrease(2, 'knit', 'left'),
  skp: decrease(2, 'knit', 'left'),
  'k2tog tbl': decrease(2, 'knit', 'left'),
  'k3tog tbl': decrease(3, 'knit', 'left'),
  sssk: decrease(3, 'knit', 'left'),
  sk2p: decrease(3, 'knit', 'left'),
  ssp: decrease(2, 'purl', 'left'),
  spp: decrease(2, 'purl'),
  sp2p: decrease(3, 'purl'),
  'p2tog tbl': decrease(2, 'purl', 'left'),
  'p3tog tbl': decrease(3, 'purl', 'left'),
  sssp: decrease(3, 'purl', 'left'),
  s2kp: decrease(3, 'knit'),
  s2pp: decrease(3, 'purl'),
  'sl1 k2 psso': { takes: 3, makes: 2, looks: 'knit' },
  dec: decrease(2, 'knit'),
  'dec 2': decrease(3, 'knit'),
  'dec 3': decrease(4, 'knit'),
  'dec 4': decrease(5, 'knit'),
  drop: { takes: 1, makes: 0, is: 'dropped' },
  m1: increase(0, 1),
  m1l: { ...increase(0, 1), leans: 'left' },
  m1r: { ...increase(0, 1), leans: 'right' },
  m1p: increase(0, 1, 'purl'),
  yo: increase(0, 1),
  'yo twice': increase(0, 2),
  kfb: increase(1, 2),
  pfb: increase(1, 2, 'purl'),
  kfbf: increase(1, 3),
  inc: increase(1, 2),
  'inc 2': increase(1, 3),
  'inc 3': increase(1, 4),
  'inc 4': increase(1, 5),
  bo: { takes: 1, makes: 0, is: 'bound off' },
  hold: { takes: 1, makes: 0, is: 'held' },
  co: { takes: 0, makes: 1, is: 'cast on' },
  pu: { takes: 0, makes: 1, is: 'cast on' },
  take: { takes: 0, makes: 1, is: 'cast on' },
  'join yarn': { takes: 0, makes: 0 },
  'wrap next st': { takes: 0, makes: 0 },
  'picking up each wrap': { takes: 0, makes: 0 },
  'working each ds as one st': { takes: 0, makes: 0 },
  ds: { takes: 1, makes: 1 },
};

/** A cable's name has the stitches that cross: 'c6f' six in all, '2/1 rpc' two over one. */
function cable(word: string): Meaning | undefined {
  const over = /^(\d+)\/(\d+) [lr]p?c$/.exec(word);
  const inAll = over ? Number(over[1]) + Number(over[2]) : Number(/^[ct](\d+)[fb]$/.exec(word)?.[1]);
  const width = word === 'rt' || word === 'lt' ? 2 : inAll;
  return width ? { takes: width, makes: width, is: 'crossed' } : undefined;
}

/** '(k1, yo, k1) in next st': one loop, of which so many are made. */
const inOne = (word: string): Meaning | undefined =>
  /^(k1|p1|yo)( (k1|p1|yo))+$/.test(word)
    ? increase(1, word.split(' ').length, word.startsWith('p') ? 'purl' : 'knit')
    : undefined;

export function meaningOf(word: string): Meaning {
  const found = known[word] ?? cable(word) ?? inOne(word);
  if (!found) throw new Error(`nobody told the knitter what “${word}” is`);
  return found;
}
