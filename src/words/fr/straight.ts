import type { words as english } from '../en/straight.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  straight: 'Pièces droites',
  straightHint:
    'Sans emmanchures, manches élargies en un rang. Saisissez une longueur, ou des mailles ou des rangs : l’autre suit. Ensuite, vous pouvez changer chaque chiffre des pièces.',
  straightNeedsGauge: 'Une fois votre échantillon saisi ci-dessus, mailles et rangs suivent les longueurs.',
  neckBoat: 'Encolure bateau',
  neckV: 'Encolure en V',
  inLength: '{what}, {unit}',
  inStitches: '{what}, mailles',
  inRows: '{what}, rangs',
  figureWidth: 'Largeur',
  figureLength: 'Longueur',
  figureBorder: 'Bordure',
  figureNeckWidth: 'Largeur d’encolure',
  figureNeckDepth: 'Profondeur d’encolure',
  figureCuff: 'Poignet',
  figureSleeveTop: 'Haut de manche',
  figureSleeveLength: 'Manche',
  takeStraight: 'Faire dos, devant et manches',
  straightMissing: 'Il manque encore un chiffre.',
  straightShoulders: {
    one: 'Chaque épaule a {count} maille, l’encolure {neck}.',
    other: 'Chaque épaule a {count} mailles, l’encolure {neck}.',
  },
  straightOddV: 'Un V commence entre deux mailles : donnez à la largeur un nombre pair de mailles.',
  straightNeckWide: 'L’encolure ne laisse pas d’épaules : faites-la plus étroite, ou les pièces plus larges.',
  straightShort:
    'Les rangs ne suffisent pas : faites les pièces plus longues, ou bordure et encolure plus courtes.',
  straightSteep:
    'Le V demande plus de diminutions qu’il n’a de rangs : faites-le plus profond ou plus étroit.',
  straightSleeve:
    'Un rang peut au plus doubler les mailles du poignet, et une manche n’est pas plus étroite que son poignet : changez l’un des deux.',
};
