import type { words as english } from '../en/straight.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  straight: 'Gerade Teile',
  straightHint:
    'Ohne Armlöcher, Ärmel in einer Reihe verbreitert. Tippe eine Länge, oder Maschen oder Reihen: Das andere folgt. Danach darfst du jede Zahl der Teile ändern.',
  straightNeedsGauge: 'Mit deiner Maschenprobe oben folgen Maschen und Reihen aus den Längen.',
  neckBoat: 'U-Boot-Ausschnitt',
  neckV: 'V-Ausschnitt',
  inLength: '{what}, {unit}',
  inStitches: '{what}, Maschen',
  inRows: '{what}, Reihen',
  figureWidth: 'Breite',
  figureLength: 'Länge',
  figureBorder: 'Bund',
  figureNeckWidth: 'Ausschnittbreite',
  figureNeckDepth: 'Ausschnitttiefe',
  figureCuff: 'Bündchen',
  figureSleeveTop: 'Ärmel oben',
  figureSleeveLength: 'Ärmellänge',
  takeStraight: 'Rückenteil, Vorderteil und Ärmel anlegen',
  straightMissing: 'Eine Zahl fehlt noch.',
  straightShoulders: {
    one: 'Jede Schulter hat {count} Masche, der Ausschnitt {neck}.',
    other: 'Jede Schulter hat {count} Maschen, der Ausschnitt {neck}.',
  },
  straightOddV: 'Ein V beginnt zwischen zwei Maschen: Gib der Breite eine gerade Maschenzahl.',
  straightNeckWide: 'Der Ausschnitt lässt keine Schultern übrig: Mach ihn schmaler oder die Teile breiter.',
  straightShort: 'Die Reihen reichen nicht: Mach die Teile länger, oder Bund und Ausschnitt kürzer.',
  straightSteep: 'Das V braucht mehr Abnahmen, als es Reihen hat: Mach es tiefer oder schmaler.',
  straightSleeve:
    'Eine Reihe kann die Maschen des Bündchens höchstens verdoppeln, und ein Ärmel ist nicht schmaler als sein Bündchen: Ändere eines von beiden.',
};
