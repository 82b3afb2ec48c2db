import type { words as english } from '../en/knitting.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  opening: 'Wird geöffnet …',
  toWorkbasket: 'Zum Strickkorb',
  backTo: 'Zurück zu {garment}',
  rowOf: 'Reihe {row} von {rows}',
  toGo: { one: 'noch {count} Reihe', other: 'noch {count} Reihen' },
  lastRow: 'letzte Reihe',
  afterRow: { one: 'Masche nach dieser Reihe', other: 'Maschen nach dieser Reihe' },
  onlyRead: 'nur gelesen',
  fewer: '{count} weniger',
  moreThan: '{count} mehr',
  shapingRow: 'Formen',
  bindOffRow: 'Abketten',
  done: 'Reihe fertig',
  undo: 'Zurücknehmen',
  lock: 'Sperren',
  legend: 'Was die Wörter bedeuten',
  announce: 'Reihe {row} von {rows}, {side}. {what}. Danach {count}.',
  announceEnd: '{part}: letzte Reihe gestrickt.',
  setUp: 'Vor Reihe 1',
  setUpCastOn: {
    one: 'Mit Nadel {needle} {count} Masche anschlagen.',
    other: 'Mit Nadel {needle} {count} Maschen anschlagen.',
  },
  setUpPickUp:
    'Von der rechten Seite mit Nadel {needle} {list} auffassen und rechts stricken: zusammen {total}.',
  setUpPickUpEdge: '{count} entlang: {along}',
  setUpHeldEdge: '{count} vom Maschenraffer: {along}',
  setUpTake: {
    one: 'Die {count} Masche {edge} von {part} auf Nadel {needle} nehmen; den Faden neu ansetzen, wenn er nicht dort hängt. Reihe 1: {first}.',
    other:
      'Die {count} Maschen {edge} von {part} auf Nadel {needle} nehmen; den Faden neu ansetzen, wenn er nicht dort hängt. Reihe 1: {first}.',
  },
  atMiddle: 'in der Mitte',
  goBack: 'Zurückgehen',
  tools: 'Werkzeuge',
};
