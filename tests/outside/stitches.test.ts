import { describe, expect, it } from 'vitest';
import { type StitchName, stitches } from '../../src/knit/stitch.ts';

/** Stitches taken and left, from the definitions in the books named; tbl and k3tog forms follow from k2tog. */
const published: readonly (readonly [source: string, stitch: StitchName, takes: number, makes: number])[] = [
  ['Begin to Knit, Star Book No. 201, American Thread Co. (PG 61105), pp. 9–11', 'k', 1, 1],
  ['PG 61105, pp. 9–11', 'p', 1, 1],
  ['PG 61105, pp. 9–11', 'sl', 1, 1],
  ['PG 61105, pp. 9–11', 'yo', 0, 1],
  ['PG 61105, pp. 9–11', 'k2tog', 2, 1],
  ['PG 61105, pp. 9–11', 'p2tog', 2, 1],
  ['PG 61105, pp. 9–11 (sl 1, k 1, psso)', 'skp', 2, 1],
  ['Handbook of Wool Knitting and Crochet, 1918 (PG 26113), lesson', 'kfb', 1, 2],
  ['Miss Lambert, My Knitting Book, 1843 (PG 33502), terms', 'k3tog', 3, 1],
  ['PG 33502, terms (slip 1, knit 2 together, pass over)', 'sk2p', 3, 1],
  ['Begin to Knit (PG 61105): bind off n takes n away', 'bo', 1, 0],
  ['standard abbreviation list of the Craft Yarn Council, from memory', 'ssk', 2, 1],
  ['from memory, as above', 'ssp', 2, 1],
  ['from memory, as above', 's2kp', 3, 1],
  ['Purl Soho, Slip Slip Purl Pass (purlsoho.com)', 's2pp', 3, 1],
  ['from memory, as above', 'm1', 0, 1],
  ['from memory, as above', 'm1l', 0, 1],
  ['from memory, as above', 'm1r', 0, 1],
  ['from memory, as above', 'm1p', 0, 1],
  ['from memory, as above', 'pfb', 1, 2],
];

describe('stitches take and leave what the books say', () => {
  it.each(published)('%s: %s', (_source, stitch, takes, makes) => {
    expect(stitches[stitch]).toMatchObject({ takes, makes });
  });
});
