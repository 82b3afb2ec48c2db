import { describe, expect, it } from 'vitest';
import { stitches, stitchNames } from '../../src/knit/stitch.ts';
import type { CableName } from '../../src/words/gloss.ts';
import { type Language, languages } from '../../src/words/languages.ts';
import { plainSpeech } from '../../src/words/settings.ts';
import { crossingOf, openGlossary } from '../../src/words/stitch-glossary.ts';

const cables = stitchNames.filter((name): name is CableName => stitches[name].role === 'cable');

describe('the explanations of stitches', () => {
  it('explain every stitch that a row can ask for, in every language', async () => {
    for (const language of languages) {
      const explain = await openGlossary({ ...plainSpeech, language });
      for (const name of stitchNames) {
        const { name: called, how } = explain(name);
        expect({ name, explained: called.length > 1 && how.length > 20 }).toEqual({ name, explained: true });
      }
    }
  });

  it('say in each language how many stitches come or go, as the table has it', async () => {
    const counted: Readonly<Record<Language, (number: number, more: boolean) => string>> = {
      en: (n, more) => `${['One', 'Two', 'Three', 'Four'][n - 1]} stitche?s? ${more ? 'more' : 'fewer'}`,
      de: (n, more) => `${['Eine', 'Zwei', 'Drei', 'Vier'][n - 1]} Maschen? ${more ? 'mehr' : 'weniger'}`,
      fr: (n, more) => `${['Une', 'Deux', 'Trois', 'Quatre'][n - 1]} mailles? de ${more ? 'plus' : 'moins'}`,
    };
    const given = stitchNames.filter(
      (name) => /^(?!dec|inc)/.test(name) && /decrease|increase/.test(stitches[name].role) && name !== 'drop',
    );
    expect(given.length).toBeGreaterThan(35);
    for (const language of languages) {
      const explain = await openGlossary({ ...plainSpeech, language });
      for (const name of given) {
        const change = stitches[name].makes - stitches[name].takes;
        const told = new RegExp(counted[language](Math.abs(change), change > 0)).test(explain(name).how);
        expect({ name, language, told }).toEqual({ name, language, told: true });
      }
    }
  });

  it('use the terms of the setting', async () => {
    expect((await openGlossary(plainSpeech))('bo').name).toBe('bind off');
    expect((await openGlossary({ ...plainSpeech, terms: 'UK' }))('bo').name).toBe('cast off');
  });
});

describe('a crossing, taken apart from its name', () => {
  it('is as wide as the stitch table has it', () => {
    expect(cables.length).toBeGreaterThan(40);
    for (const name of cables) {
      const { over, under } = crossingOf(name);
      expect({ name, width: over + under }).toEqual({ name, width: stitches[name].takes });
    }
  });

  it('leans left when its stitches are held in front, right when they are held behind (common practice, no published source)', () => {
    expect(crossingOf('c4f')).toEqual({ leans: 'left', over: 2, under: 2, purled: false, open: false });
    expect(crossingOf('t4b')).toEqual({ leans: 'right', over: 2, under: 2, purled: true, open: false });
    expect(crossingOf('2/1 rpc')).toEqual({ leans: 'right', over: 2, under: 1, purled: true, open: false });
    expect(crossingOf('c5f').open).toBe(true);
  });

  it('is told in words that use up its stitches', async () => {
    const explain = await openGlossary(plainSpeech);
    expect(explain('2/1 lpc').how).toBe(
      'Put 2 stitches on a cable needle in front of the work; purl 1; knit the 2 from the cable needle.',
    );
    expect(explain('2/1 rc').how).toBe(
      'Put 1 stitch on a cable needle behind the work; knit 2; knit the 1 from the cable needle.',
    );
  });
});
