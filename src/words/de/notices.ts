import type { words as english } from '../en/notices.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  saving: 'Noch nicht gespeichert',
  savingHelp: {
    one: '{count} Reihe wird gerade notiert. Sie zählt, sobald das getan ist.',
    other: '{count} Reihen werden gerade notiert. Sie zählen, sobald das getan ist.',
  },
  readAhead: 'Reihe {row} · noch nicht gespeichert: Reihe {from}',
  readFarAhead: 'Reihe {row} · noch nicht gespeichert: Reihen {from} bis {to}',
  held: 'Beiseite gelegt: strick weiter',
  heldHelp:
    'Der Speicher nimmt gerade nichts. Deine Reihen liegen daneben und kommen hinein, sobald er wieder kann. Strick weiter.',
  heldFull:
    'Auf dem Gerät ist kein Platz mehr. Deine Reihen liegen neben dem Speicher und kommen hinein, sobald du Platz machst. Strick weiter.',
  heldOld:
    'Diese Seite ist zu alt zum Schreiben. Deine Reihen liegen neben dem Speicher: Lade die Seite neu, dann kommen sie hinein.',
  notSaved: 'Nicht gespeichert: nicht weiterstricken',
  checkRow: 'Nicht gespeichert: erst die Reihe prüfen',
  onlyHere: {
    one: 'Strick nicht weiter: {count} Reihe steht nur auf dieser Seite. Schreib dir auf, wo du bist, bevor du sie neu lädst oder schließt.',
    other:
      'Strick nicht weiter: {count} Reihen stehen nur auf dieser Seite. Schreib dir auf, wo du bist, bevor du sie neu lädst oder schließt.',
  },
  tryAgain: 'Noch einmal versuchen',
  restTitle: 'Gönn deinen Händen eine Pause',
  restBody: 'Du strickst schon eine ganze Weile. Leg die Nadeln hin, öffne die Hände und schau in die Ferne.',
  restDone: 'Weiterstricken',
  restNever: 'Nicht mehr erinnern',
  locked: 'Gesperrt. Berühren bewirkt nichts.',
  holdToUnlock: 'Zum Entsperren halten',
  noSuchMake: 'Unter dieser Adresse gibt es nichts zu stricken',
  noSuchMakeHelp:
    'Vielleicht wurde es gelöscht, oder die Adresse ist unvollständig. Deine Strickstücke sind im Strickkorb.',
};
