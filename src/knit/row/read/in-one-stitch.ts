import type { StitchName } from '../../stitch.ts';
import type { Item } from './notation.ts';

const IN_ONE: Readonly<Record<string, StitchName>> = {
  'k p': 'k1 p1',
  'p k': 'k1 p1',
  'k p k': 'k1 p1 k1',
  'p k p': 'p1 k1 p1',
  'k p k p': 'k1 p1 k1 p1',
  'k p k p k': 'k1 p1 k1 p1 k1',
  'k yo k': 'k1 yo k1',
  'k yo k yo k': 'k1 yo k1 yo k1',
};

const BY_LOOPS: readonly (StitchName | undefined)[] = [
  undefined,
  undefined,
  'inc',
  'inc 2',
  'inc 3',
  'inc 4',
];

/** The stitch that '(k1, p1, k1) in next st' is. */
export function inOneStitch(items: readonly Item[]): StitchName | undefined {
  const works: string[] = [];
  for (const item of items) {
    if (item.is !== 'stitches' || item.times > 9) return undefined;
    for (let i = 0; i < item.times; i += 1)
      works.push(item.work === 'k tbl' ? 'k' : item.work === 'p tbl' ? 'p' : item.work);
  }
  return IN_ONE[works.join(' ')] ?? BY_LOOPS[works.length];
}
