import { describe, expect, it } from 'vitest';
import { mirrorStitches, otherFaces } from '../../../src/knit/row/mirror-stitches.ts';
import { stitchNames } from '../../../src/knit/stitch.ts';
import { meaningOf } from '../../knitter/meaning.ts';

/* By what the knitter of the tests knows of each stitch, apart from the table. */

/** Of four and five at once the trade has none that leans left. */
const alone = new Set(['k4tog', 'p4tog', 'k5tog', 'p5tog']);
const leaning = stitchNames.filter((name) => meaningOf(name).leans !== undefined && !alone.has(name));

describe('a row read from its other end', () => {
  it('has its stitches in turn', () => {
    expect(mirrorStitches(['k', 'k2tog', 'yo', 'p'])).toEqual(['p', 'yo', 'ssk', 'k']);
  });

  it.each(leaning)('%s leans the other way, and takes, leaves and looks the same', (name) => {
    const { takes, makes, looks, leans } = meaningOf(name);
    const [mirrored = name] = mirrorStitches([name]);
    expect(meaningOf(mirrored)).toEqual({ takes, makes, looks, leans: leans === 'left' ? 'right' : 'left' });
  });
});

describe('a row as it is worked from the other side', () => {
  it('keeps its order', () => {
    expect(otherFaces(['k', 'k2tog', 'yo', 'p'])).toEqual(['p', 'p2tog', 'yo', 'k']);
  });

  const decreases = leaning.filter((name) => meaningOf(name).takes > 1);
  it.each(decreases)('%s looks the other way and leans the same, as one does seen from its back', (name) => {
    const { takes, makes, looks, leans } = meaningOf(name);
    const [turned = name] = otherFaces([name]);
    expect(meaningOf(turned)).toEqual({ takes, makes, looks: looks === 'knit' ? 'purl' : 'knit', leans });
  });

  it.each([
    ['s2kp', 's2pp'],
    ['k tbl', 'p tbl'],
    ['kfb', 'pfb'],
    ['m1', 'm1p'],
  ] as const)('%s is %s there, and the other way round', (one, other) => {
    expect(otherFaces([one, other])).toEqual([other, one]);
  });
});
