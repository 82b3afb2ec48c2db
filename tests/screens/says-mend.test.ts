import { beforeAll, expect, it } from 'vitest';
import type { Edit } from '../../src/knit/making-up/edit.ts';
import { saysMend } from '../../src/screens/mends/says-consequence.ts';
import { loadWords } from '../../src/words/say.ts';

beforeAll(() => loadWords('mends'));

const said = (by: number, from: 'neck' | 'cast-on') => {
  const edit: Edit = { kind: 'shoulder', piece: 'Back', edges: ['left', 'right'], by, from };
  return saysMend([edit], { pieces: [] });
};

it('a mend of shoulders says how many stitches, and what gives or takes them', () => {
  expect(said(1, 'neck')).toBe('Make the shoulder of Back 1 stitch wider too, its neck as much narrower');
  expect(said(-3, 'neck')).toBe('Make the shoulder of Back 3 stitches narrower too, its neck as much wider');
  expect(said(2, 'cast-on')).toBe('Cast on more for Back, 2 stitches for each shoulder: all of it is wider');
  expect(said(-1, 'cast-on')).toBe(
    'Cast on fewer for Back, 1 stitch for each shoulder: all of it is narrower',
  );
});
