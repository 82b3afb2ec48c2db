import type { words as english } from '../en/notices.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  saving: 'Pas encore enregistré',
  savingHelp: {
    one: '{count} rang est en train d’être noté. Il compte dès que c’est fait.',
    other: '{count} rangs sont en train d’être notés. Ils comptent dès que c’est fait.',
  },
  readAhead: 'Rang {row} · pas encore enregistré : rang {from}',
  readFarAhead: 'Rang {row} · pas encore enregistrés : rangs {from} à {to}',
  held: 'Mis de côté : continuez',
  heldHelp:
    'Le stockage ne prend rien pour l’instant. Vos rangs sont gardés à côté et y entreront dès qu’il le pourra. Continuez à tricoter.',
  heldFull:
    'Il n’y a plus de place sur l’appareil. Vos rangs sont gardés à côté du stockage et y entreront dès que vous en aurez libéré. Continuez à tricoter.',
  heldOld:
    'Cette page est trop ancienne pour écrire. Vos rangs sont gardés à côté du stockage : rechargez la page, et ils y entreront.',
  notSaved: 'Pas enregistré : ne continuez pas',
  checkRow: 'Pas enregistré : vérifiez d’abord le rang',
  onlyHere: {
    one: 'Ne continuez pas : {count} rang n’est que dans cette page. Notez où vous en êtes avant de la recharger ou de la fermer.',
    other:
      'Ne continuez pas : {count} rangs ne sont que dans cette page. Notez où vous en êtes avant de la recharger ou de la fermer.',
  },
  tryAgain: 'Réessayer',
  restTitle: 'Reposez vos mains un instant',
  restBody: 'Vous tricotez depuis un bon moment. Posez les aiguilles, ouvrez les mains et regardez au loin.',
  restDone: 'Continuer',
  restNever: 'Ne plus me le rappeler',
  locked: 'Verrouillé. Toucher l’écran ne fait rien.',
  holdToUnlock: 'Appui long pour déverrouiller',
  noSuchMake: 'Il n’y a rien à tricoter à cette adresse',
  noSuchMakeHelp:
    'L’ouvrage a peut-être été supprimé, ou l’adresse est tronquée. Vos ouvrages sont dans la corbeille.',
};
