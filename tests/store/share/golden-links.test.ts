import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { linkToGarment } from '../../../src/store/share/link.ts';

/** Links as each version of them was passed on, with the garment that they brought then: such ones lie in letters for ever. */
const links = JSON.parse(readFileSync(new URL('../golden/links.json', import.meta.url), 'utf8')) as readonly {
  readonly what: string;
  readonly link: string;
  readonly garment: unknown;
}[];

it.each(links)('a link of old opens as it did: $what', async ({ link, garment }) => {
  expect(await linkToGarment(link)).toEqual({ ok: true, value: garment });
});

it('they are of each version', () => {
  expect([...new Set(links.map(({ link }) => link.split('.')[0]))]).toEqual(['1', '2', '3']);
});
