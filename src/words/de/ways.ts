import type { words as english } from '../en/ways.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Zwei Geräte sind hier zwei Wege gegangen',
  open: 'Zwei Wege hier: wählen',
  ask: 'Was davon liegt auf den Nadeln? Das andere wird behalten, unter „Aufribbeln“.',
  here: 'dieses Gerät',
  elsewhere: 'das andere Gerät',
  choose: 'Reihe {row} gestrickt',
  chooseStart: 'Noch nichts gestrickt, {rows} Reihen',
  left: 'Reihe {row} gestrickt, {stitches}, {device}: Das blieb liegen, als zwei Geräte vereint wurden.',
  takeUp: 'Das wieder aufnehmen',
};
