import type { words as english } from '../en/length.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Ab und zu messen: {length}',
  titleOpen: 'Weiterstricken, bis es so lang ist, wie die Anleitung sagt',
  from: {
    one: 'Gemessen {where}. Nach Plan fehlt noch {count} Reihe.',
    other: 'Gemessen {where}. Nach Plan fehlen noch {count} Reihen.',
  },
  start: 'ab der Anschlagkante',
  here: 'ab dem Anfang dieser Strecke',
  armhole: 'ab dem Beginn des Armlochs',
  rib: 'ab dem Ende des Rippenmusters',
  elsewhere: 'ab der Stelle, die die Anleitung nennt',
  longEnough: 'Lang genug',
  twoMore: 'Zwei Reihen mehr',
  oneFirst: 'Nach der nächsten Reihe kann es enden, damit das Folgende auf der richtigen Seite beginnt.',
};
