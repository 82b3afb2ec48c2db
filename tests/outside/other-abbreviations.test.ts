import { expect, it } from 'vitest';
import { abbreviationsIn } from '../../src/knit/written/abbreviations.ts';
import { fetchWritten } from '../../src/words/written.ts';

/**
 * German: what M, re, li and U stand for, as a published list has it (strickanleitungen-kostenlos.de, 'So wird eine
 * Strickanleitung für Muster gelesen'); zusstr, R, Hin-R, Rück-R and verschr as a yarn house prints them (Garnstudio, pattern
 * 7350 in German). Where sources differ: knitpro.eu ('Meistere die Kunst der Maschenabnahme') has '2 M re zus str'.
 * French: m., aug., att., derr., ens., env. (bergers-cathares.com, 'Tricot : abréviations'), m, env and '2 m ens end'
 * (tricotant.com, 'Abréviations : guide et lexique'); rg, rab, gliss and dern are common practice, no published source.
 */
it.each([
  ['de', '2 M anschlagen', 'M', /^Masche/],
  ['de', '5 re, 2 M re zusstr', 're', /^rechts/],
  ['de', '3 li', 'li', /^links/],
  ['de', '1 U', 'U', /^Umschlag/],
  ['de', '2 M re zusstr', 'zusstr', /^zusammenstricken/],
  ['de', '28 R = 10 cm', 'R', /^Reihe/],
  ['de', 'Reihe 1 (Hin-R)', 'Hin-R', /^Hinreihe/],
  ['de', 'Reihe 2 (Rück-R)', 'Rück-R', /^Rückreihe/],
  ['de', '2 M re verschr zusstr', 'verschr', /^verschränkt/],
  ['fr', 'monter 92 m', 'm', /^maille/],
  ['fr', '2 m ens end', 'ens', /^ensemble/],
  ['fr', '3 m env', 'env', /^à l’envers/],
  ['fr', '3 m end', 'end', /^à l’endroit/],
  ['fr', '1 aug interc', '1 aug interc', /^augmentation/],
  ['fr', 'mettre 3 m en att', 'att', /^attente/],
] as const)('%s: of %s, %s stands for what published lists say', async (language, line, name, means) => {
  const told = new Map(
    abbreviationsIn([line], await fetchWritten(language)).map((one) => {
      const [short = '', ...rest] = one.split(' = ');
      return [short, rest.join(' = ')];
    }),
  );
  expect(told.get(name)).toMatch(means);
});
