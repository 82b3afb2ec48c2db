import type { StitchName } from '../stitch.ts';

/** The words in which a row is printed; each language and wording has one of these. */
export interface RowWords {
  /** 'k5', 'bind off 5 sts', 'k2tog' */
  stitches(work: StitchName, times: number): string;
  /** 'knit to end', 'purl to last 4 sts' */
  stitchesTo(work: StitchName, left: number): string;
  /** the whole row in one stitch: 'knit', 'bind off all sts' */
  wholeRow(work: StitchName): string;
  /** '[k2, m1] 19 times' */
  group(inner: string, times: number): string;
  /** '[k1, p1] to last 2 sts', inside another repeat */
  groupTo(inner: string, left: number): string;
  /** '*k1, p1; repeat from * to end' */
  repeatTo(inner: string, left: number): string;
  /** between steps */
  readonly comma: string;
}

export type Terms = 'US' | 'UK';
export type Wording = 'abbreviated' | 'full';

const fullNames: Partial<Record<StitchName, string>> = {
  k2tog: 'knit 2 together',
  p2tog: 'purl 2 together',
  k3tog: 'knit 3 together',
  p3tog: 'purl 3 together',
  ssk: 'slip slip knit',
  ssp: 'slip slip purl',
  sssp: 'slip slip slip purl',
  sk2p: 'slip 1 knit 2 together pass slipped stitch over',
  s2kp: 'slip 2 together knit 1 pass slipped stitches over',
  s2pp: 'slip 2 together purl 1 pass slipped stitches over',
  m1: 'make 1',
  m1l: 'make 1 left',
  m1r: 'make 1 right',
  m1p: 'make 1 purlwise',
  kfb: 'knit into front and back',
  pfb: 'purl into front and back',
  kfbf: 'knit into front back and front',
  yo: 'yarn over',
  inc: 'increase 1',
  dec: 'decrease 1',
};

/** Names that would read as several stitches, or as a count, are said so that they read as one. */
const oneStitch = (work: StitchName): string =>
  /^[kp]1( ([kp]1|yo))+$/.test(work)
    ? `(${work.replaceAll(' ', ', ')}) in next st`
    : work.replace(/^inc .$/, '$& in next st').replace(/^dec .$/, '$& at once');

const sts = (n: number, full: boolean): string =>
  full ? (n === 1 ? 'stitch' : 'stitches') : n === 1 ? 'st' : 'sts';

/** English row words by terms (US or UK) and wording. */
export function englishRowWords(terms: Terms = 'US', wording: Wording = 'abbreviated'): RowWords {
  const full = wording === 'full';
  const off = terms === 'US' ? 'bind off' : 'cast off';
  const many = sts(2, full);
  const end = (left: number) =>
    left === 0 ? 'to end' : `to last ${left === 1 ? '' : `${left} `}${sts(left, full)}`;
  const inFull = (said: string) => said.replace(/\bds\b/, 'double stitch').replace(/\bst$/, 'stitch');
  const name = (work: StitchName) => (full ? (fullNames[work] ?? inFull(oneStitch(work))) : oneStitch(work));
  const edge: Partial<Record<StitchName, (n: number) => string>> = {
    bo: (n) => `${off} ${n} ${sts(n, full)}`,
    co: (n) => `cast on ${n} ${sts(n, full)}`,
    pu: (n) => `pick up and knit ${n} ${sts(n, full)}`,
    hold: (n) => `place ${n} ${sts(n, full)} on holder`,
    take: (n) => `take up ${n} ${sts(n, full)} from holder`,
    patt: (n) => `work ${n} ${sts(n, full)} in pattern`,
    unworked: (n) => `leave ${n} ${sts(n, full)} unworked`,
  };
  const runs: Partial<Record<StitchName, string>> = {
    bo: off,
    patt: 'work in pattern',
    k: 'knit',
    p: 'purl',
    sl: 'slip',
    co: 'cast on',
    pu: 'pick up and knit',
    hold: `place ${many} on holder`,
    take: `take up ${many} from holder`,
    unworked: `leave ${many} unworked`,
  };
  const stitches = (work: StitchName, times: number): string => {
    const said = edge[work];
    if (said) return said(times);
    if (work === 'k' || work === 'p' || work === 'sl')
      return full ? `${runs[work]} ${times}` : `${work}${times}`;
    return times === 1 ? name(work) : `[${name(work)}] ${times} times`;
  };
  return {
    stitches,
    stitchesTo: (work, left) =>
      work === 'unworked' && left === 0 ? 'turn' : `${runs[work] ?? `[${name(work)}]`} ${end(left)}`,
    wholeRow: (work) =>
      work === 'bo' ? `${off} all ${many} in pattern` : (runs[work] ?? `[${name(work)}] ${end(0)}`),
    group: (inner, times) => `[${inner}] ${times} times`,
    groupTo: (inner, left) => `[${inner}] ${end(left)}`,
    repeatTo: (inner, left) => `*${inner}; repeat from * ${end(left)}`,
    comma: ', ',
  };
}
