import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { choices, draftSaid } from './choices.ts';

/*
 * What each choice changes in a plain draft, and that it changes nothing else: the lines that the plain one does not have
 * (`choices.json`), and how many there are in all. Counts, rows and what is sewn to what follow from the even figures of
 * `spelled.ts` (5 mm a stitch, 4 mm a row) and were read through by hand; in which rows single stitches of a curve go, and
 * lengths along curves, are held as they are, so that nothing moves unseen.
 */
const expected = JSON.parse(readFileSync(new URL('choices.json', import.meta.url), 'utf8')) as Readonly<
  Record<string, Readonly<Record<string, readonly string[]>>>
>;

describe.each(Object.entries(choices))('%s', (plain, [of, others]) => {
  const lines = new Set(draftSaid(of));

  it('has all of its choices held', () => {
    expect(Object.keys(expected[plain] ?? {})).toEqual(Object.keys(others));
  });

  it.each(Object.entries(others))('with %s', (name, but) => {
    const chosen = draftSaid({ ...of, ...but });
    expect([`${chosen.length} lines`, ...chosen.filter((line) => !lines.has(line))]).toEqual(
      expected[plain]?.[name],
    );
  });
});
