import type { words as english } from '../en/straight.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  straight: 'Gerade Teile',
  straightHint:
    'Ohne Armausschnitte, Ärmel in einer Reihe verbreitert. Tippe eine Länge, oder Maschen oder Reihen: Das andere folgt. Danach darfst du jede Zahl der Teile ändern.',
  straightNeedsGauge: 'Mit deiner Maschenprobe oben folgen Maschen und Reihen aus den Längen.',
  neckBoat: 'U-Boot-Ausschnitt',
  neckV: 'V-Ausschnitt',
  inLength: '{what}, {unit}',
  inStitches: '{what}, Maschen',
  inRows: '{what}, Reihen',
  figureWidth: 'Breite',
  figureLength: 'Länge',
  figureBorder: 'Bündchen',
  figureNeckWidth: 'Halsbreite',
  figureNeckDepth: 'Halstiefe',
  figureCuff: 'Ärmelbund',
  figureSleeveTop: 'Ärmel oben',
  figureSleeveLength: 'Ärmellänge',
  takeStraight: 'Rücken, Vorderteil und Ärmel anlegen',
  straightMissing: 'Eine Zahl fehlt noch.',
  straightShoulders: {
    one: 'Jede Schulter hat {count} Masche, der Hals {neck}.',
    other: 'Jede Schulter hat {count} Maschen, der Hals {neck}.',
  },
  straightOddV: 'Ein V beginnt zwischen zwei Maschen: Gib der Breite eine gerade Maschenzahl.',
  straightNeckWide: 'Der Hals lässt keine Schultern übrig: Mach ihn schmaler oder die Teile breiter.',
  straightShort: 'Die Reihen reichen nicht: Mach die Teile länger, oder Bündchen und Hals kürzer.',
  straightSteep: 'Das V braucht mehr Abnahmen, als es Reihen hat: Mach es tiefer oder schmaler.',
  straightSleeve:
    'Eine Reihe kann die Maschen des Bundes höchstens verdoppeln, und ein Ärmel ist nicht schmaler als sein Bund: Ändere eines von beiden.',
};
