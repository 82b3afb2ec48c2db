import type { Abbreviation } from '../../../knit/written/written-words.ts';

/** Of the lists that are named in row.ts, in our own words. */
export const abbreviations: readonly Abbreviation[] = [
  [
    '1 M li gen zun',
    'links geneigt zunehmen: den Querfaden von vorn auf die Nadel heben und re verschränkt stricken',
  ],
  ['1 M li zun', 'links zunehmen: den Querfaden aufheben und li verschränkt stricken', /1 M li zun\b/],
  ['1 M re gen zun', 'rechts geneigt zunehmen: den Querfaden von hinten auf die Nadel heben und re stricken'],
  ['1 M re verdopp', '1 Masche verdoppeln: erst von vorn, dann von hinten re in dieselbe Masche stricken'],
  [
    '1 M zun',
    'zunehmen: den Querfaden vor der nächsten Masche aufheben und re verschränkt stricken',
    /1 M zun\b/,
  ],
  [
    '2 M abgeh li zusstr',
    '2 Maschen einzeln wie zum Rechtsstricken abheben, dann li verschränkt zusammenstricken',
  ],
  [
    '2 M abgeh re zusstr',
    '2 Maschen einzeln wie zum Rechtsstricken abheben, dann re verschränkt zusammenstricken',
  ],
  [
    '3 M abgeh li zusstr',
    '3 Maschen einzeln wie zum Rechtsstricken abheben, dann li verschränkt zusammenstricken',
  ],
  ['3 M mittig li zusstr', '2 Maschen verschränkt zusammen abheben, 1 li, die abgehobenen darüberziehen'],
  [
    '3 M mittig zusstr',
    '2 Maschen zusammen wie zum Rechtsstricken abheben, 1 re, die abgehobenen darüberziehen',
  ],
  [
    '3 M überz zusstr',
    '1 Masche wie zum Rechtsstricken abheben, 2 re zusammenstricken, die abgehobene darüberziehen',
  ],
  ['abh', 'abheben'],
  ['Doppelmasche', 'die Masche an der Wende, so angezogen, dass zwei Schlingen über der Nadel liegen'],
  ['Hin-R', 'Hinreihe: die rechte Seite liegt vorn'],
  ['li', 'links, linke Masche'],
  ['M', 'Masche, Maschen'],
  ['mm', 'Millimeter'],
  ['R', 'Reihe, Reihen', /(?<![\p{L}-])R(?!\p{L})/u],
  ['re', 'rechts, rechte Masche'],
  ['Rück-R', 'Rückreihe: die linke Seite liegt vorn'],
  ['U', 'Umschlag'],
  ['verschr', 'verschränkt, durch das hintere Maschenglied'],
  ['zusstr', 'zusammenstricken'],
];
