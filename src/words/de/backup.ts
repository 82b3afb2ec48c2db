import type { words as english } from '../en/backup.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Sicherung',
  toSettings: 'Zu den Einstellungen',
  what: 'Alles, was du gemacht hast, in einer offenen Datei: Strickstücke, Reihen, Notizen, Fotos. Bewahre sie nicht nur auf diesem Telefon auf.',
  never: 'Auf diesem Gerät wurde noch nichts gesichert.',
  last: 'Letzte Sicherung: {when}.',
  since: { one: 'Seither {count} Eintrag.', other: 'Seither {count} Einträge.' },
  make: 'Jetzt sichern',
  making: 'Alles wird gesammelt …',
  made: {
    one: 'Gesichert: {count} Strickstück, {entries} Einträge.',
    other: 'Gesichert: {count} Strickstücke, {entries} Einträge.',
  },
  notMade: 'Die Sicherung ging nicht',
  keepUp: 'Eine Datei aktuell halten',
  keepUpHelp:
    'Einmal eine Datei wählen. Sie wird neu geschrieben, sobald du die App mit neuen Reihen weglegst.',
  keepUpOn: 'Wird aktuell gehalten: {name}',
  keepUpStop: 'Nicht mehr aktuell halten',
  openTitle: 'Sicherung öffnen',
  openHelp:
    'Eine Sicherung, oder ein Strickstück, das dir jemand weitergibt. Die Datei wird ganz geprüft, bevor sich etwas ändert. Du siehst, was sich ändern würde, und entscheidest dann.',
  choose: 'Datei wählen',
  drop: 'oder hier ablegen',
  reading: 'Wird gelesen und geprüft …',
  cannot: 'Diese Datei kann nicht übernommen werden. Nichts wurde geändert.',
  merge: 'Zusammenführen',
  mergeHelp: 'Beides bleibt: Strickstücke und Reihen der Datei kommen zu denen auf diesem Gerät.',
  replace: 'Alles ersetzen',
  replaceHelp: 'Was auf diesem Gerät ist, geht; an seine Stelle tritt die Datei.',
  nothing: 'Es würde sich nichts ändern: alles ist schon da.',
  same: {
    one: '{count} Strickstück bleibt, wie es ist.',
    other: '{count} Strickstücke bleiben, wie sie sind.',
  },
  new: '{name}: kommt dazu',
  gone: '{name}: fällt weg',
  changed: '{name}: ändert sich',
  changedRows: '{name}: {count} Einträge kommen dazu',
  further: {
    one: '{what}: die Datei ist {count} Reihe weiter',
    other: '{what}: die Datei ist {count} Reihen weiter',
  },
  behind: {
    one: '{what}: die Datei ist {count} Reihe zurück',
    other: '{what}: die Datei ist {count} Reihen zurück',
  },
  after: 'danach Reihe {row}',
  photos: { one: '{count} Foto kommt dazu.', other: '{count} Fotos kommen dazu.' },
  done: 'Fertig. {title}',
  takenIn: 'Die Datei ist übernommen.',
  undo: 'Zurücknehmen',
  undone: 'Zurückgenommen: alles ist, wie es war.',
  toWorkbasket: 'Zum Strickkorb',
};
