import type { words as english } from '../en/notices.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  saving: 'Noch nicht gespeichert',
  savingHelp: {
    one: '{count} Reihe wartet darauf, notiert zu werden. Strick weiter, sie ist nicht vergessen.',
    other: '{count} Reihen warten darauf, notiert zu werden. Strick weiter, sie sind nicht vergessen.',
  },
  readAhead: 'Reihe {row} · noch nicht gespeichert: Reihe {from}',
  readFarAhead: 'Reihe {row} · noch nicht gespeichert: Reihen {from} bis {to}',
  held: 'Beiseite gelegt',
  heldHelp:
    'Der Browser antwortet nicht auf das Schreiben. Deine Reihen liegen daneben bereit und kommen hinein, sobald er antwortet; strick weiter.',
  notSaved: 'Nicht gespeichert',
  tryAgain: 'Noch einmal versuchen',
  restTitle: 'Gönn deinen Händen eine Pause',
  restBody: 'Du strickst schon eine ganze Weile. Leg die Nadeln hin, öffne die Hände und schau in die Ferne.',
  restDone: 'Weiterstricken',
  restNever: 'Nicht mehr erinnern',
};
