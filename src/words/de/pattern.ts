import type { words as english } from '../en/pattern.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Anleitung abschreiben',
  toWorkbasket: 'Zurück zum Strickkorb',
  opening: 'Öffnet, was du getippt hast …',
  tooLong: 'Der Text ist zu lang, um ganz gelesen zu werden',
  tooLongHelp: {
    one: 'Das letzte Zeichen wird aufbewahrt, aber nicht gelesen. Kopiere ein Strickstück nach dem anderen.',
    other:
      'Die letzten {count} Zeichen werden aufbewahrt, aber nicht gelesen. Kopiere ein Strickstück nach dem anderen.',
  },
  reading: 'Der Text wird gelesen …',
  stop: 'Anhalten',
  stopped: 'Der Text wurde nicht zu Ende gelesen',
  stoppedHelp: 'Was unten steht, kann von einem früheren Text sein. Lies ihn jetzt, oder ändere den Text.',
  readOn: 'Jetzt lesen',
  beginAnew: 'Neu anfangen',
  intro:
    'Füge den englischen Text einer Anleitung ein oder tippe ihn, Teil für Teil. Darunter steht Zeile für Zeile, was verstanden wurde, mit den Maschen nach jeder Reihe.',
  handed: 'Eine andere App hat einen Text übergeben',
  handedHelp: 'Nichts davon wurde übernommen. Er beginnt:',
  take: 'Hier lesen',
  takeInstead: 'Anstelle des Textes hier lesen',
  leave: 'Lassen',
  address: 'Das ist die Adresse einer Seite',
  addressHelp:
    'Ridgeline holt keine Seiten. Den Text der Anleitung auf der Seite kopieren und den teilen oder einfügen.',
  name: 'Name des Strickstücks',
  unnamed: 'Abgeschriebene Anleitung',
  text: 'Der Text',
  textHint:
    'Jedes Teil beginnt mit seinem Namen auf eigener Zeile: BACK, SLEEVES (make 2). Amerikanische oder britische Worte, abgekürzt oder nicht.',
  size: 'Größe',
  gauge: 'Deine Maschenprobe',
  gaugeHint:
    'Von deiner gewaschenen Probe; sie geht vor der des Textes. Nach ihr werden Längen zu Reihen. Wo keine bekannt ist, zählst du, bis es lang genug ist.',
  stitches: 'Maschen auf {length}',
  rows: 'Reihen auf {length}',
  understood: 'Was verstanden wurde',
  nothing: 'Noch nichts zu lesen.',
  talk: 'Ergibt keine Reihen.',
  counts: '{before} → {after}',
  countsLong: '{before} Maschen davor, {after} danach',
  onNeedle: { one: '{count} M auf der Nadel', other: '{count} M auf der Nadel' },
  showAll: { one: 'Die Reihe zeigen', other: 'Alle {count} Reihen zeigen' },
  length: {
    one: 'Eine Länge: nach der Maschenprobe {count} Reihe. Beim Stricken sagst du, wann sie lang genug ist.',
    other:
      'Eine Länge: nach der Maschenprobe {count} Reihen. Beim Stricken sagst du, wann sie lang genug ist.',
  },
  openLength: 'Eine Länge ohne Maschenprobe: beim Stricken zählst du weiter, bis sie lang genug ist.',
  ownWords: 'Nicht verstanden: bleibt mit diesen Worten im Plan.',
  askCount: 'Maschen nach dieser Zeile',
  writeCount: 'Dazuschreiben',
  changeThis: 'Zeile {line} ändern',
  line: 'Zeile {line}',
  done: 'Fertig',
  pieces: { one: '{count} Teil', other: '{count} Teile' },
  toLookAt: { one: '{count} Zeile anzusehen', other: '{count} Zeilen anzusehen' },
  allAgrees: 'Alle Maschenzahlen stimmen',
  make: 'Strickstück anlegen',
  making: 'Der Plan entsteht …',
  cannot: 'Dieses Teil lässt sich noch nicht anlegen: {piece}',
  kept: 'Wird beim Tippen auf diesem Gerät aufgehoben.',
  notKept: 'Das Getippte konnte nicht aufgehoben werden. Lass diese Seite offen und versuche es noch einmal.',
  startAgain: 'Von vorn beginnen',
  startAgainAsk: 'Mit leerer Seite von vorn beginnen?',
  startAgainText:
    'Der Text und was dafür gewählt wurde gehen verloren. Schon angelegte Strickstücke bleiben.',
  keepGoing: 'Text behalten',
};
