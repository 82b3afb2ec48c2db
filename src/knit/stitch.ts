/**
 * Every stitch that a row can ask for: how many it takes from the left needle and how many it leaves.
 * Takes and makes follow the definitions in the handbooks named in tests/outside; the names are those of
 * the trade's standard abbreviation list, in lower case.
 */
export interface StitchKind {
  /** stitches consumed from the left needle */
  readonly takes: number;
  /** stitches left on the right needle */
  readonly makes: number;
  /** how its loops look from the side on which it is worked */
  readonly looks: 'knit' | 'purl' | 'other';
  readonly role: 'plain' | 'decrease' | 'increase' | 'cable' | 'edge';
}

const plain = (looks: StitchKind['looks']): StitchKind => ({ takes: 1, makes: 1, looks, role: 'plain' });
const dec = (takes: number, makes: number, looks: StitchKind['looks'] = 'knit'): StitchKind => ({
  takes,
  makes,
  looks,
  role: 'decrease',
});
const inc = (takes: number, makes: number, looks: StitchKind['looks'] = 'knit'): StitchKind => ({
  takes,
  makes,
  looks,
  role: 'increase',
});
const cable = (width: number): StitchKind => ({ takes: width, makes: width, looks: 'other', role: 'cable' });
const edge = (takes: number, makes: number): StitchKind => ({ takes, makes, looks: 'other', role: 'edge' });

const table = {
  k: plain('knit'),
  p: plain('purl'),
  sl: plain('other'),
  'sl wyif': plain('other'),
  'sl wyib': plain('other'),
  'k tbl': plain('knit'),
  'p tbl': plain('purl'),
  'k1 below': plain('knit'),
  'p1 below': plain('purl'),
  /** as the pattern on the needle asks ('work in pattern'), where the text does not spell it */
  patt: plain('other'),
  /** left on the needle at a turn, or passed without working after one (a short row) */
  unworked: plain('other'),
  /** a bobble, worked and drawn together at once */
  mb: plain('other'),
  k2tog: dec(2, 1),
  p2tog: dec(2, 1, 'purl'),
  ssk: dec(2, 1),
  ssp: dec(2, 1, 'purl'),
  skp: dec(2, 1),
  'k2tog tbl': dec(2, 1),
  'p2tog tbl': dec(2, 1, 'purl'),
  k3tog: dec(3, 1),
  p3tog: dec(3, 1, 'purl'),
  'k3tog tbl': dec(3, 1),
  'p3tog tbl': dec(3, 1, 'purl'),
  sssk: dec(3, 1),
  sssp: dec(3, 1, 'purl'),
  sk2p: dec(3, 1),
  s2kp: dec(3, 1),
  /** the same from the purl side: the middle stitch lies on top as seen from the other one */
  s2pp: dec(3, 1, 'purl'),
  'sl1 k2 psso': dec(3, 2),
  k4tog: dec(4, 1),
  p4tog: dec(4, 1, 'purl'),
  k5tog: dec(5, 1),
  p5tog: dec(5, 1, 'purl'),
  drop: dec(1, 0, 'knit'),
  /** slip 1, purl 1 or purl 2 together, pass the slipped stitch over */
  spp: dec(2, 1, 'purl'),
  sp2p: dec(3, 1, 'purl'),
  /** a decrease that the text leaves to the knitter ('dec 1') */
  dec: dec(2, 1),
  'dec 2': dec(3, 1),
  'dec 3': dec(4, 1),
  'dec 4': dec(5, 1),
  m1: inc(0, 1),
  m1l: inc(0, 1),
  m1r: inc(0, 1),
  m1p: inc(0, 1, 'purl'),
  yo: inc(0, 1),
  'yo twice': inc(0, 2),
  kfb: inc(1, 2),
  pfb: inc(1, 2, 'purl'),
  kfbf: inc(1, 3),
  'k1 p1': inc(1, 2),
  'k1 p1 k1': inc(1, 3),
  'p1 k1 p1': inc(1, 3, 'purl'),
  'k1 p1 k1 p1': inc(1, 4),
  'k1 p1 k1 p1 k1': inc(1, 5),
  'k1 yo k1': inc(1, 3),
  'k1 yo k1 yo k1': inc(1, 5),
  /** an increase that the text leaves to the knitter ('inc 1' in the next stitch) */
  inc: inc(1, 2),
  'inc 2': inc(1, 3),
  'inc 3': inc(1, 4),
  'inc 4': inc(1, 5),
  /** bound off: one stitch less for each; as the trade counts them, the last one needs a stitch beside it or the end */
  bo: edge(1, 0),
  /** cast on at the needle in work */
  co: edge(0, 1),
  /** picked up and knitted along an edge */
  pu: edge(0, 1),
  /** the yarn is joined here: the row does not begin where the last one ended */
  'join yarn': edge(0, 0),
  /** the yarn laid round the next stitch before a turn; what is said of the row that picks such wraps up */
  'wrap next st': edge(0, 0),
  'picking up each wrap': edge(0, 0),
  /** the first stitch after a turn, pulled up so that its two legs lie on the needle; of the row that works them as one */
  ds: plain('other'),
  'working each ds as one st': edge(0, 0),
  /** put on a stitch holder */
  hold: edge(1, 0),
  /** taken up again from a holder */
  take: edge(0, 1),
  rt: cable(2),
  lt: cable(2),
  c2f: cable(2),
  c2b: cable(2),
  c3f: cable(3),
  c3b: cable(3),
  c4f: cable(4),
  c4b: cable(4),
  c5f: cable(5),
  c5b: cable(5),
  c6f: cable(6),
  c6b: cable(6),
  c8f: cable(8),
  c8b: cable(8),
  c10f: cable(10),
  c10b: cable(10),
  c12f: cable(12),
  c12b: cable(12),
  t2f: cable(2),
  t2b: cable(2),
  t3f: cable(3),
  t3b: cable(3),
  t4f: cable(4),
  t4b: cable(4),
  t5f: cable(5),
  t5b: cable(5),
  '1/1 lc': cable(2),
  '1/1 rc': cable(2),
  '1/1 lpc': cable(2),
  '1/1 rpc': cable(2),
  '2/1 lc': cable(3),
  '2/1 rc': cable(3),
  '2/1 lpc': cable(3),
  '2/1 rpc': cable(3),
  '2/2 lc': cable(4),
  '2/2 rc': cable(4),
  '2/2 lpc': cable(4),
  '2/2 rpc': cable(4),
  '1/2 lc': cable(3),
  '1/2 rc': cable(3),
  '1/2 lpc': cable(3),
  '1/2 rpc': cable(3),
  '3/1 lc': cable(4),
  '3/1 rc': cable(4),
  '1/3 lc': cable(4),
  '1/3 rc': cable(4),
  '1/3 lpc': cable(4),
  '1/3 rpc': cable(4),
  '3/1 lpc': cable(4),
  '3/1 rpc': cable(4),
  '3/2 lpc': cable(5),
  '3/2 rpc': cable(5),
  '3/2 lc': cable(5),
  '3/2 rc': cable(5),
  '2/3 lc': cable(5),
  '2/3 rc': cable(5),
  '2/3 lpc': cable(5),
  '2/3 rpc': cable(5),
  '3/3 lc': cable(6),
  '3/3 rc': cable(6),
  '3/3 lpc': cable(6),
  '3/3 rpc': cable(6),
  '4/4 lc': cable(8),
  '4/4 rc': cable(8),
  '5/5 lc': cable(10),
  '5/5 rc': cable(10),
  '6/6 lc': cable(12),
  '6/6 rc': cable(12),
} as const satisfies Record<string, StitchKind>;

export type StitchName = keyof typeof table;

export const stitches: Readonly<Record<StitchName, StitchKind>> = table;

export const stitchNames = Object.keys(table) as readonly StitchName[];

export const isStitchName = (text: string): text is StitchName => Object.hasOwn(table, text);
