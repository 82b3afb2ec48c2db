import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyTableNames, bodyTables } from '../../../src/knit/garment/bodies.ts';
import { resized } from '../../../src/knit/garment/grade.ts';
import { otherTongue } from '../../../src/knit/pattern/text/other-tongue.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { toMend } from '../../../src/knit/written/look-through.ts';
import { draftSize } from '../../../src/knit/written/work-size.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import type { WrittenWords } from '../../../src/knit/written/written-words.ts';
import { fetchWritten } from '../../../src/words/written.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { given } from '../../store/scenario.ts';

/** RIDGELINE_DRAFTS=1000 for the whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 5);

const rest = {
  name: 'Fen',
  credits: 'A. Knitter',
  licence: 'CC BY 4.0',
  yarns: [{ name: 'Hollin', fibre: 'Lana', grams: 50, metres: 120 }],
  swatches: [{ fabric: 'stocking', stitches: 21, widthMm: 100, rows: 28, heightMm: 100, needle: 4 } as const],
};

/** The designs of a law in up to four sizes of a table; those that can be knitted. */
const inSizes = fc
  .record({
    design: someDesign(),
    table: fc.constantFrom(...bodyTableNames),
    from: fc.nat(4),
    count: fc.integer({ min: 1, max: 4 }),
    units: fc.constantFrom('cm' as const, 'in' as const, 'both' as const),
  })
  .map(({ design, table, from, count, units }) => ({
    units,
    sizes: bodyTables[table].slice(from, from + count).flatMap(({ size, body }) => {
      const made = draftSize(size, resized(design, body), rest);
      return made.ok ? [made.value] : [];
    }),
  }));

/**
 * Every figure of a text in its order, read by nothing of ours: a comma between digits is a point, what English says as a
 * word of one figure is that figure. What explains the abbreviations is left out: its figures are those of their names.
 */
function figures(text: string): readonly string[] {
  const [before = '', after = ''] = text.split(/^(?:ABBREVIATIONS|ABKÜRZUNGEN|ABRÉVIATIONS)\n(?:.+\n)+/m);
  return (
    `${before}${after}`
      .replace(/\b[sc]\d?sp\b/g, '')
      .replace(/once more/g, '1 times more')
      // names of stitches: what they take is no count
      .replace(/\b[kp][2-5]tog\b|\bs2[kp]p\b|\bsk2p\b|\b(?:m1[lrp]?|kfb|yo)\b/g, '')
      .replace(
        /\b[2-5] [Mm] (?:(?:re|li|abgeh|überz|mittig|ens|gliss|end|env) ?)*(?:zusstr\b|ens (?:end|env)\b|(?<=ens (?:end|env)))/g,
        '',
      )
      .replace(
        /\b1 (?:M (?:(?:re|li) )?(?:gen )?zun\b|M re verdopp|aug (?:interc|barrée)|surj double|U\b|jeté)/g,
        '',
      )
      .replace(/\bto last st\b/g, 'to last 1 st')
      .replace(/jusqu’à la dern m/g, 'jusqu’aux 1 dern m')
      .replace(/(\d),(\d)/g, '$1.$2')
      .match(/\d+(?:\.\d+)?/g) ?? []
  );
}

/** Whole words of German and of French up to five letters that rows are written with, apart from what is tried. */
const whole: Readonly<Record<'de' | 'fr', ReadonlySet<string>>> = {
  de: new Set(
    'die ende faden größe lücke mit mitte nadel nur reihe seite zu ab alle an auf bis dann das dem den der des es im in jeder liegt linke links mal man nach neu noch sind trägt und vor vorn wie zum über als dabei ärmel x hals mm cm arm motiv eine jede ohne fen ecke naht von oben unten bund rumpf glatt kraus v s l xl xs'.split(
      ' ',
    ),
  ),
  fr: new Set(
    'avec bande dos rang sur abord après aux avoir bord côtes d de droit du en et face fil fin fois haut jusqu l la le les ne porté puis que rangs soi tous tout trou une vis à coin pour chaque vis-à-vis dans motif mois x au dos comme seule fen n bas corps tête point riz v s xl xs un'.split(
      ' ',
    ),
  ),
};

/** Words of a row as English leaflets print them (Craft Yarn Council's list of abbreviations; from memory). */
const ENGLISH =
  /(?<![\p{L}\d])(?:k\d*|p\d*|k2tog|p2tog|ssk|ssp|sk2p|s2kp|s2pp|sssp|kfb|m1[lrp]?|yo|sl\d*|sts?|tbl|rep|Rep|rem|foll|RS|WS|knit|purl|row|rows|bind|cast|off|holder|rib|turn|with|then|edge|neck|sleeve|back|front|band|left|right|shoulder)(?![\p{L}\d])/u;

describe.each(['de', 'fr'] as const)(
  `a pattern written in another language (%s; ${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`,
  (language) => {
    it('has the same lines and the same figures in the same order as in English, no English row word and no abbreviation that is not explained', {
      timeout: 600_000,
    }, async () => {
      const words: WrittenWords = await fetchWritten(language);
      const english = englishWritten('US');
      fc.assert(
        fc.property(inSizes, ({ sizes, units }) => {
          if (sizes.length === 0) return;
          const text = given(writeSizes(sizes, { words, units }));
          const first = given(writeSizes(sizes, { words: english, units }));
          expect(figures(text), `${text}\n${first}`).toEqual(figures(first));
          for (const line of text.split('\n')) {
            expect(ENGLISH.exec(line.replace(/Fen|Raglan-?/g, ''))?.[0], line).toBeUndefined();
            expect(line).not.toMatch(/undefined|NaN|\[object|\$\{/);
          }
          expect(toMend(text, sizes, words), text).toEqual([]);
          expect(unexplained(text, language), text).toEqual([]);
          // what cannot be read back is known at once for what it is
          expect(otherTongue(text)).toBe(language);
          expect(otherTongue(first)).toBeUndefined();
        }),
        { numRuns: DRAFTS, endOnFailure: true },
      );
    });
  },
);

/** Short words in the rows that are neither whole words nor on the list. */
function unexplained(text: string, language: 'de' | 'fr'): readonly string[] {
  const blocks = text.trim().split('\n\n');
  const heading = language === 'de' ? 'ABKÜRZUNGEN' : 'ABRÉVIATIONS';
  const at = blocks.findIndex((block) => block.startsWith(heading));
  const told = (blocks[at] ?? '').split('\n').flatMap((line) => (line.split(' = ')[0] ?? '').split(/[ ]/));
  const rows = blocks
    .slice(at + 1)
    .filter((block) => /\n(?:Nur [^:]+: |Tailles? [^:]+: )?(?:Reihe|Rang) \d/.test(block));
  const found = rows.join('\n').replace(/^\p{Lu}.*$/gmu, (line) => (/[a-zà-ÿ]{2}/.test(line) ? line : ''));
  const short =
    found.match(/\p{L}+(?:-\p{L}+)*/gu)?.filter((word) => word.length <= 5 || /-/.test(word)) ?? [];
  const known = new Set([...told, 'm', 'M']);
  return [...new Set(short)].filter((word) => !known.has(word) && !whole[language].has(word.toLowerCase()));
}
