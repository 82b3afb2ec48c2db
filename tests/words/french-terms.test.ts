import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';

/**
 * Terms as published glossaries of French knitters have them:
 * B: bergers-cathares.com, 'Tricot : abréviations' (aiguille, attente, augmentation, bordure, boutonnière, coloris, derrière);
 * L: brico-line.com, 'Termes technique du tricot' (attente, augmentation, diminution, glisser, jeté, lisière);
 * T: tricool.fr, 'Les bases pour déchiffrer un patron de tricot en anglais' (rang, maille, monter, endroit, envers, rabattage,
 *    marqueur, manche, poignet);
 * C: biscottecie.com, blog of 2 December 2009 (maille endroit, maille envers, monter, rabattre, glisser, jetée);
 * without a letter: common practice, no published source.
 */
const terms: readonly (readonly [english: RegExp, french: RegExp, source: string])[] = [
  [/\bcast[- ]?on\b/i, /mont(er|age|é|ez)/i, 'T, C'],
  [/\b(bind|bound|binding) off\b/i, /rabat/i, 'T, C'],
  [/\bpick(ed)? up and knit\b/i, /relever et tricoter/i, ''],
  [/\bmarkers?\b/i, /marqueur/i, 'T'],
  [/\bstitch(es)?\b/i, /\bmailles?\b|\bm\b|point/i, 'T'],
  [/\brows?\b/i, /\brangs?\b/i, 'T'],
  [/\bright side\b/i, /endroit/i, 'T, C'],
  [/\bwrong side\b/i, /envers/i, 'T, C'],
  [/\bincreas/i, /augment/i, 'B, L'],
  [/\bdecreas/i, /diminu/i, 'L'],
  [/\bswatch/i, /échantillon/i, ''],
  [/\bsleeves?\b/i, /manche/i, 'T'],
  [/\bcuffs?\b/i, /poignet/i, 'T'],
  [/\barmholes?\b/i, /emmanchure/i, ''],
  [/\bneckband\b/i, /bordure d’encolure|bordure/i, 'B'],
  [/\bneck\b/i, /encolure|col\b/i, ''],
  [/\bbutton ?holes?\b/i, /boutonnière/i, 'B'],
  [/\blifelines?\b/i, /fils? de vie/i, ''],
  [/\bmattress stitch\b/i, /point de matelas/i, ''],
  [/\bgarter\b/i, /mousse/i, ''],
  [/\bseed\b/i, /riz/i, ''],
  [/\bstripes?\b/i, /ray/i, ''],
];

/** Messages with words of English patterns in them, which stay English. */
const english: readonly string[] = ['pattern textHint', 'settings termsUShint', 'settings termsUKhint'];

async function messages(tag: string): Promise<ReadonlyMap<string, string>> {
  const all = new Map<string, string>();
  for (const file of readdirSync(join('src', 'words', tag)).filter((name) => name.endsWith('.ts'))) {
    const { words = {} } = (await import(
      /* @vite-ignore */ pathToFileURL(join('src', 'words', tag, file)).href
    )) as { readonly words?: Readonly<Record<string, string | Readonly<Record<string, string>>>> };
    for (const [key, said] of Object.entries(words))
      all.set(`${file.replace('.ts', '')} ${key}`, typeof said === 'string' ? said : (said.other ?? ''));
  }
  return all;
}

describe('French', () => {
  it('says each term of the trade by one word throughout, as glossaries have it', async () => {
    const [said, french] = await Promise.all([messages('en'), messages('fr')]);
    const without = (text: string) => text.replace(/\{[^}]*\}/g, '').replace(/[[\]]/g, '');
    const asked = [...said].filter(([key]) => !english.includes(key));
    const has = (term: RegExp) => asked.filter(([, text]) => term.test(without(text))).length;
    // each of them is there to be said
    expect(terms.filter(([en]) => has(en) === 0)).toEqual([]);
    const apart = asked.flatMap(([key, text]) =>
      terms
        .filter(([en, fr]) => en.test(without(text)) && !fr.test(without(french.get(key) ?? '')))
        .map(([en]) => `${key}: ${en.source} | ${text} | ${french.get(key)}`),
    );
    expect(apart).toEqual([]);
  });

  it('never calls the place in the rows by the word for a marker, nor says from here on as English does', async () => {
    const said = [...(await messages('fr'))].filter(([, text]) => /rep[èe]re|dès ici/i.test(text));
    expect(said).toEqual([]);
  });
});
