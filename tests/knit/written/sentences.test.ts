import { describe, expect, it } from 'vitest';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { writtenWords as german } from '../../../src/words/de/written/written.ts';
import { writtenWords as french } from '../../../src/words/fr/written/written.ts';

/** Each sentence of a written pattern in its forms, as leaflets on both sides of the Atlantic have them: common practice, no published source. */
const { work, list, facts } = englishWritten('US');
const uk = englishWritten('UK');

describe('the rows in English', () => {
  it.each([
    [work.count(1), '1 st'],
    [work.count(2), '2 sts'],
    [work.count(0), '0 sts'],
    [work.section('hem', 'garter stitch', 1), 'Hem, in garter stitch, 1 row:'],
    [work.section('hem', 'garter stitch', 2), 'Hem, in garter stitch, 2 rows:'],
    [work.castOn(92, undefined), 'Cast on 92 sts.'],
    [work.castOn(92, '4'), 'With 4 mm needles, cast on 92 sts.'],
    [
      work.pickUp(
        [
          { along: 'left front neck', stitches: 12, held: false },
          { along: 'middle', stitches: 1, held: true },
        ],
        13,
        '3.5',
      ),
      'With 3.5 mm needles, with RS facing, pick up and knit 12 sts along left front neck, knit 1 st from holder along middle. (13 sts)',
    ],
    [
      work.pickUp([{ along: 'edge', stitches: 1, held: false }], 1, undefined),
      'With RS facing, pick up and knit 1 st along edge. (1 st)',
    ],
    [work.hold(12, true), 'Place rem 12 sts on a holder.'],
    [work.hold(12, false), 'Place next 12 sts on a holder.'],
    [work.hold(1, false), 'Place next 1 st on a holder.'],
    [work.divide('first', 20, 40), 'Divide: work on first 20 sts only; place rem 40 sts on a holder.'],
    [work.divide('last', 1, 1), 'Divide: work on last 1 st only; place rem 1 st on a holder.'],
    [work.rejoin('WS', 20), 'With WS facing, rejoin yarn to next 20 sts.'],
    [work.change('3.5'), 'Change to 3.5 mm needles.'],
    [work.row(3, 'RS', 'knit'), 'Row 3 (RS): knit.'],
    [work.bindOffAll(true, ' in rib'), 'Bind off all sts loosely in rib'],
    [uk.work.bindOffAll(false, ''), 'Cast off all sts'],
    [work.repeat(3, 3, 1), 'Rep row 3 once more.'],
    [work.repeat(3, 4, 2), 'Rep rows 3 and 4, 2 times more.'],
    [work.repeat(3, 5, 1), 'Rep rows 3–5 once more.'],
    [work.rhythm(3, [{ every: 4, to: 63 }]), 'Rep row 3 on every foll 4th row to 63 sts.'],
    [
      work.rhythm(3, [
        { every: 12, to: 63 },
        { every: 22, to: 1 },
        { every: 112, to: 0 },
        { every: 2, to: 7 },
      ]),
      'Rep row 3 on every foll 12th row to 63 sts, then on every foll 22nd row to 1 st, then on every foll 112th row to 0 sts, then on every foll 2nd row to 7 sts.',
    ],
  ])('%s', (said, wanted) => {
    expect(said).toBe(wanted);
  });

  it.each<[Parameters<typeof work.makes>[1], string]>([
    [{ mirrored: false, asWorn: false, isTopDown: false }, ' (make 2)'],
    [{ mirrored: true, asWorn: false, isTopDown: false }, ' (make 2, the second as a mirror image)'],
    [
      { mirrored: true, asWorn: true, isTopDown: false },
      ' (make 2, the second as a mirror image: first the left front as worn, then the right)',
    ],
    [{ mirrored: false, asWorn: false, isTopDown: true }, ' (make 2, from the top down)'],
  ])('%j', (about, wanted) => {
    expect(work.makes(2, about)).toBe(wanted);
  });
});

describe('sizes and facts in English', () => {
  it.each([
    [list.sizes(1, 'S'), 'Size: S'],
    [list.sizes(2, 'S (M)'), 'Sizes: S (M)'],
    [list.only(['S']), 'Size S only: '],
    [list.only(['S', 'M']), 'Sizes S and M only: '],
    [list.only(['S', 'M', 'L']), 'Sizes S, M and L only: '],
    [facts.ease('5 cm', true), 'Ease: 5 cm wider than the body at the chest'],
    [facts.ease('5 cm', false), 'Ease: 5 cm narrower than the body at the chest'],
    [facts.buttons(5, 18), 'Buttons: 5, 18 mm across'],
    [facts.buttons(5, undefined), 'Buttons: 5'],
    [
      facts.longNeedle(['Left band', 'Neckband'], '3.5 mm', 80),
      'Circular needle for the left band and the neckband: 3.5 mm, 80 cm long',
    ],
    [
      facts.gauge('20', '28', '10 cm', 'garter stitch', '4'),
      'Gauge: 20 sts and 28 rows = 10 cm in garter stitch on 4 mm needles.',
    ],
    [facts.gauge('20', '28', '10 cm', undefined, undefined), 'Gauge: 20 sts and 28 rows = 10 cm.'],
    [
      uk.facts.gauge('20', '28', '4 in', undefined, '4'),
      'Tension: 20 sts and 28 rows = 4 in on 4 mm needles.',
    ],
    [
      facts.striped('back', [
        { first: 1, last: 1, turn: [{ rows: 1, colour: 'sand' }] },
        { first: 2, last: 9, turn: [{ rows: 8, colour: 'woad' }] },
        {
          first: 10,
          last: 15,
          turn: [
            { rows: 1, colour: 'sand' },
            { rows: 2, colour: 'woad' },
          ],
        },
      ]),
      'Stripes, back: row 1 in sand; rows 2 to 9 in woad; rows 10 to 15: 1 row in sand, 2 rows in woad, in turn.',
    ],
    [
      facts.striped('back', [{ first: 1, last: 4, turn: [{ rows: 4, colour: 'sand' }] }], 'woad'),
      'Stripes, back: rows 1 to 4 in sand; bind off in woad.',
    ],
  ])('%s', (said, wanted) => {
    expect(said).toBe(wanted);
  });

  it.each([
    ['Row 3 (RS): knit.', true],
    ['Rep rows 1 and 2 once more.', true],
    ['Size S only: Row 3 (RS): knit.', true],
    ['Sizes S and M only: Rep row 3 once more.', true],
    ['Rows are counted.', false],
    ['Cast on 20 sts. Row 1: knit.', false],
  ])('a line of rows or none: %s', (line, is) => {
    expect(list.isRows.test(line)).toBe(is);
  });

  it('words of the other side of the Atlantic are found, a language’s own are not', () => {
    const { foreign } = englishWritten('US');
    for (const line of ['Cast off all sts', 'Tension: 20 sts', 'in stocking stitch'])
      expect([foreign.test(line), uk.foreign.test(line)], line).toEqual([true, false]);
    for (const line of ['Bind off all sts', 'stitches bound off', 'Gauge: 20 sts', 'in stockinette stitch'])
      expect([foreign.test(line), uk.foreign.test(line)], line).toEqual([false, true]);
  });
});

/** The same sentences in the words of German and French leaflets: common practice, no published source. */
describe('the rows in German and French', () => {
  it.each([
    [
      german,
      [
        '1 M',
        '2 M',
        'Rand, x, 1 Reihe:',
        'Rand, x, 2 Reihen:',
        '92 M anschlagen.',
        'Mit Nadeln 4 mm: 92 M anschlagen.',
        'Mit Nadeln 3,5 mm, rechte Seite vorn, auffassen und re stricken: 12 M (A), 1 stillgelegte M (B). (13 M)',
        'Restliche 12 M stilllegen.',
        'Nächste 12 M stilllegen.',
        'Teilen: nur über die ersten 20 M weiterstricken; restliche 40 M stilllegen.',
        'Teilen: nur über die letzten 20 M weiterstricken; restliche 40 M stilllegen.',
        'Die linke Seite liegt vorn; den Faden an den nächsten 20 M neu ansetzen.',
        'Zu Nadeln 3,5 mm wechseln.',
        'Reihe 3 (Hin-R): x.',
        'alle M locker im Rippenmuster abketten',
        'alle M im Muster abketten',
        'Reihe 3 noch 1-mal wiederholen.',
        'Reihen 3 und 4 noch 2-mal wiederholen.',
        'Reihen 3–5 noch 1-mal wiederholen.',
        'Reihe 3 in jeder 4. folgenden Reihe wiederholen, bis es 63 M sind.',
        'Reihe 3 in jeder 12. folgenden Reihe wiederholen, bis es 63 M sind, dann in jeder 2. folgenden Reihe, bis es 1 M sind.',
        '4 M im Rippenmuster',
        'im Rippenmuster, bis nach der Lücke 5 M auf der Nadel sind',
        'im Rippenmuster bis zum Ende',
        'Nur Größen S, M und L: ',
        'Zugabe: an der Brust 5 cm enger als der Körper',
        '1 Knäuel',
        '2 Knäuel',
      ],
    ],
    [
      french,
      [
        '1 m',
        '2 m',
        'Rand, x, 1 rang\u00a0:',
        'Rand, x, 2 rangs\u00a0:',
        'Monter 92 m.',
        'Avec les aiguilles 4 mm, monter 92 m.',
        'Avec les aiguilles 3,5 mm, endroit face à soi, relever et tricoter à l’endroit\u00a0: 12 m (A), 1 m en attente (B). (13 m)',
        'Mettre en attente les m restantes\u00a0: 12 m.',
        'Mettre en attente les m suivantes\u00a0: 12 m.',
        'Partager\u00a0: ne continuer que sur les premières 20 m\u00a0; mettre en attente les m restantes, 40 m.',
        'Partager\u00a0: ne continuer que sur les dernières 20 m\u00a0; mettre en attente les m restantes, 40 m.',
        'Sur l’envers, rattacher le fil aux 20 m suivantes.',
        'Prendre les aiguilles 3,5 mm.',
        'Rang 3 (endroit)\u00a0: x.',
        'rab toutes les m souplement en côtes',
        'rab toutes les m dans le motif',
        'Répéter le rang 3 encore 1 fois.',
        'Répéter les rangs 3 et 4 encore 2 fois.',
        'Répéter les rangs 3–5 encore 1 fois.',
        'Répéter le rang 3 tous les 4 rangs jusqu’à 63 m.',
        'Répéter le rang 3 tous les 12 rangs jusqu’à 63 m, puis tous les 2 rangs jusqu’à 1 m.',
        '4 m en côtes',
        'continuer en côtes jusqu’à avoir 5 m sur l’aiguille après le trou',
        'en côtes jusqu’à la fin',
        'Tailles S, M et L seulement\u00a0: ',
        'Aisance à la poitrine\u00a0: 5 cm de moins que le corps',
        '1 pelote',
        '2 pelotes',
      ],
    ],
  ])('%#', ({ work: rows, list: sizes, facts: told }, wanted) => {
    const said = [
      rows.count(1),
      rows.count(2),
      rows.section('rand', 'x', 1),
      rows.section('rand', 'x', 2),
      rows.castOn(92, undefined),
      rows.castOn(92, '4'),
      rows.pickUp(
        [
          { along: 'A', stitches: 12, held: false },
          { along: 'B', stitches: 1, held: true },
        ],
        13,
        '3,5',
      ),
      rows.hold(12, true),
      rows.hold(12, false),
      rows.divide('first', 20, 40),
      rows.divide('last', 20, 40),
      rows.rejoin('WS', 20),
      rows.change('3,5'),
      rows.row(3, 'RS', 'x'),
      rows.bindOffAll(true, ' in rib'),
      rows.bindOffAll(false, ' in pattern'),
      rows.repeat(3, 3, 1),
      rows.repeat(3, 4, 2),
      rows.repeat(3, 5, 1),
      rows.rhythm(3, [{ every: 4, to: 63 }]),
      rows.rhythm(3, [
        { every: 12, to: 63 },
        { every: 2, to: 1 },
      ]),
      rows.rib(4),
      rows.ribAfterGap(5),
      rows.ribToEnd,
      sizes.only(['S', 'M', 'L']),
      told.ease('5 cm', false),
      told.balls(1),
      told.balls(2),
    ];
    expect(said).toEqual(wanted);
  });
});
