import { expect, it } from 'vitest';
import { abbreviationsIn } from '../../src/knit/written/abbreviations.ts';
import { englishWritten } from '../../src/knit/written/english.ts';

const written = englishWritten('US');
/** All that a pattern may be written with. */
const abbreviationNames = written.abbreviations.map(([name]) => name);

/**
 * What each abbreviation stands for in published lists, in words of our own. The Craft Yarn Council's own list could not
 * be opened; pages that give it or go by it were looked up for this: cvetulka.blogspot.com ('Abbreviations', with the
 * council's two spellings of S2KP), sweaterbabe.com ('Knitting abbreviations', of the standard ones), a yarn maker's
 * leaflets (Patons PAK0129, Caron CAK0126), nevernotknitting.com ('Techniques'), knittingmagic.biz ('Knitting
 * abbreviations') and a yarn shop's list (Wild & Woolly). Capitals and small letters are not told apart in them.
 */
const published: Readonly<Record<string, RegExp>> = {
  foll: /^following/,
  k: /^knit$/,
  k2tog: /^knit 2 (stitches )?together/,
  k3tog: /^knit 3 (stitches )?together/,
  kfb: /^knit into front and back/,
  m1: /^make 1: .*strand/,
  m1l: /^make 1 .*left/,
  m1p: /^make 1 purlwise: .*strand/,
  m1r: /^make 1 .*right/,
  mm: /^millimetres/,
  p: /^purl$/,
  p2tog: /^purl 2 (stitches )?together/,
  p3tog: /^purl 3 (stitches )?together/,
  rem: /^remain/,
  rep: /^repeat/,
  RS: /^right side/,
  // S2KP or S2KP2, as the list has it
  s2kp: /^slip 2 .*together.*, knit 1, pass both/,
  sk2p: /^slip 1 .*knit 2 together, pass .*slipped stitch over/,
  sl: /^slip$/,
  ssk: /^slip 2 .*one by one, knit them together through the back loops/,
  ssp: /^slip 2 .*one by one, purl them together/,
  st: /^stitch$/,
  sts: /^stitches$/,
  tbl: /^through the back loop/,
  WS: /^wrong side/,
  yo: /^yarn over/,
};

/** In none of those lists: what they are made like, and where that is published. */
const explained: Readonly<Record<string, { readonly means: RegExp; readonly why: string }>> = {
  ds: { means: /^double stitch/, why: 'short rows of the German way; common practice, no published source' },
  s2pp: {
    means: /^slip 2 .*cross, purl 1, pass both/,
    why: 'the centred decrease of a wrong side row, so called by Purl Soho',
  },
  sssp: {
    means: /^slip 3 .*one by one, purl them together/,
    why: 'ssp with three; common practice, no published source',
  },
};

it('each abbreviation that a pattern is written with stands in published lists, or the difference is explained', () => {
  const known = [...Object.keys(published), ...Object.keys(explained)];
  expect([...abbreviationNames].sort()).toEqual(known.sort());
});

const meant = [
  ...Object.entries(published),
  ...Object.entries(explained).map(([name, { means }]) => [name, means] as const),
];

it.each(meant)('%s stands for what published lists say', (name, means) => {
  const [line = '', ...others] = abbreviationsIn([name === 'rep' ? 'Rep' : name], written);
  expect(others).toEqual([]);
  expect(line.split(' = ')[0]).toBe(name);
  expect(line.split(' = ')[1]).toMatch(means);
});

/**
 * What is not the same on both sides of the Atlantic is written out, so that no list has to be asked: 'bind off' and
 * 'cast off', 'gauge' and 'tension' (Begin to Knit and other leaflets of SOURCES). yo is the one word that UK lists divide
 * (yfwd, yrn, yon: spotlightstores.com and knittingmagic.biz): a yo is made the same whichever it is called.
 */
it('nothing is abbreviated that means something else in the UK', () => {
  const parted = ['BO', 'CO', 'dc', 'tr', 'yfwd', 'yrn', 'yon', 'tog', 'inc', 'dec'];
  expect(abbreviationNames.filter((name) => parted.includes(name))).toEqual([]);
});
