import type { words as english } from '../en/record.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Wie es gestrickt wurde',
  reading: 'Das Protokoll wird gelesen …',
  waiting: 'Noch nicht begonnen: {list}',
  rows: '{rows} von {total} Reihen',
  days: 'Vom {from} bis {to}',
  day: 'Am {from}',
  time: '{time} an den Nadeln, ohne Pausen',
  needles: 'Nadeln: {list}',
  took: 'Gewicht: {grams}.',
  ripped: { one: 'Einmal aufgeribbelt.', other: '{count}-mal aufgeribbelt.' },
  reworked: { one: 'Einmal neu geplant.', other: '{count}-mal neu geplant.' },
  checked: { one: 'Gezählt in Reihe {list}.', other: 'Gezählt in den Reihen {list}.' },
  note: 'Reihe {row}: {text}',
  again: 'Noch einmal so stricken',
  againHelp: 'Ein neues Stück mit den Änderungen, die unterwegs dazukamen; dieses bleibt, wie es ist.',
  againName: '{garment}, noch einmal',
  design: 'Aus seinen Angaben ein neues entwerfen',
  designHelp:
    'Maße, Maschenprobe und Entscheidungen, aus denen es entworfen wurde, zum Ändern: eine andere Größe, ein anderer Ausschnitt. Dieses bleibt, wie es ist.',
  designNotKept:
    'Die Angaben konnten auf diesem Gerät nicht behalten werden. Geändert ist nichts; versuch es noch einmal.',
  designAsk: 'Ein anderer Entwurf ist begonnen',
  designAskText:
    'Ein Entwurf wird im Werden behalten. Diese Angaben träten an seine Stelle, und was du dort eingetippt hast, wäre weg.',
  designOther: 'Mit dem anderen weitermachen',
  designReplace: 'Diese an seine Stelle setzen',
  likeStraight:
    'Ein neues Stück beginnt mit allen seinen Angaben. Ändere Breite, Längen und Ausschnitt auf die Größe, die du willst: Maschen und Reihen gehen mit.',
  likePieces:
    'Ein neues Stück beginnt mit seinen Teilen, wie sie sind. Keine Regel sagt, wie sie wachsen: Ändere Maschen und Reihen jedes Teils für die Größe, die du willst, und gleich, wo zwei zusammengenäht werden.',
  likeText:
    'Der Text, aus dem es übernommen wurde, wird wieder geöffnet: Wähle dort eine andere seiner Größen.',
  likeYarn:
    'Seine Garne gehen mit, ohne das, was du davon hast, und seine Streifen auch: gleich viele Reihen jeder Farbe, von denselben Abschnitten an.',
  likeYarnNot: 'Seine Garne und Streifen werden nicht übernommen: Trag sie neu ein.',
  likeStays: 'Dieses Stück bleibt, wie es ist.',
  likeBegin: 'Anfangen',
  likeOther: 'Ein anderes ist angefangen',
  likeOtherText:
    'Eines zurzeit wird im Werden behalten. Dieses träte an seine Stelle, und was du dort eingetippt hast, wäre weg.',
  cannot: 'So lässt es sich nicht noch einmal stricken',
};
