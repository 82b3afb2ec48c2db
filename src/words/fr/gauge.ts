import type { words as english } from '../en/gauge.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  measuredIn: 'Mesuré en',
  in: 'Mesuré en {fabric}.',
  unsaid: 'pas encore dit',
  needle: 'Avec les aiguilles, mm',
  needleNumber: 'Avec les aiguilles',
  guessed: '{fabric} : estimé d’après votre échantillon en {from}',
  askTitle: 'Cet échantillon était-il au point mousse ?',
  askHelp:
    'La plupart des rangs sont ici au point mousse, et rien ne dit dans quel point {stitches} mailles et {rows} rangs pour {length} ont été comptés. Ils ont été pris pour du jersey. Votre réponse corrige mesures et dessins ; aucun rang ne change.',
  askYes: 'Oui, au point mousse',
  askNo: 'Non, en jersey',
};
