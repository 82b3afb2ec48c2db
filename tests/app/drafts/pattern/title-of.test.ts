import { describe, expect, it } from 'vitest';
import { titleOf } from '../../../../src/app/drafts/pattern/title-of.ts';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

const rows = 'BACK\nCast on 20 sts.\nKnit 10 rows.\nBind off.';
const titled = (above: string) => titleOf(readPattern(`${above}${rows}`));

describe('the title of a copied text', () => {
  it.each(['Evening vest', 'A Scarf for Two', 'VEST WITH A V-NECK', 'Pull “Étoile” No. 3'])(
    'is its first line: %s',
    (line) => {
      expect(titled(`${line}\nA warm one in garter stitch.\nSizes: S (M, L)\n`)).toBe(line);
    },
  );

  it.each([
    '',
    'A warm vest in garter stitch.\n',
    'Sizes: S (M, L)\n',
    'Materials\n4 balls of yarn\n',
    'Designed by a friend\n',
    'Note for those who knit loosely\n',
    '12 (14, 16)\n',
    'This is a vest that I have knitted for three of my friends in the last winter\n',
  ])('is none where the text begins otherwise: %j', (above) => {
    expect(titled(above)).toBeUndefined();
  });
});
