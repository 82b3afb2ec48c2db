import type { words as english } from '../en/record.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Wie es gestrickt wurde',
  reading: 'Das Protokoll wird gelesen …',
  make: '{piece}, Nr. {make}',
  part: '{piece}, Nr. {make}: {part}',
  notBegun: 'Nicht begonnen.',
  rows: '{rows} von {total} Reihen',
  days: 'Vom {from} bis {to}',
  day: 'Am {from}',
  time: '{time} an den Nadeln, ohne Pausen',
  needles: 'Nadeln: {list}',
  took: 'Gewicht: {grams}.',
  ripped: { one: 'Einmal aufgetrennt.', other: '{count}-mal aufgetrennt.' },
  reworked: { one: 'Einmal neu geplant.', other: '{count}-mal neu geplant.' },
  checked: 'Gezählt in Reihe {list}.',
  note: 'Reihe {row}: {text}',
  again: 'Noch einmal so stricken',
  againHelp: 'Ein neues Stück mit den Änderungen, die unterwegs dazukamen; dieses bleibt, wie es ist.',
  againName: '{garment}, noch einmal',
  cannot: 'So lässt es sich nicht noch einmal stricken',
};
