import type { words as english } from '../en/store-faults.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  'storage-full': 'Das Telefon ist voll, darum konnte dies nicht notiert werden. Schaff etwas Platz und versuch es noch einmal.',
  'storage-refused': 'Dieser Browser lässt Ridgeline nichts behalten, wie in einem privaten Fenster. Öffne es in einem gewöhnlichen Fenster.',
  'store-not-answering': 'Der Browser antwortet nicht auf das Schreiben. Versuch es noch einmal; hilft das nicht, lade die Seite neu.',
  'database-newer': 'Diese Strickstücke wurden mit einem neueren Ridgeline geöffnet. Hier lassen sie sich lesen, nicht ändern. Lade die Seite neu, um zum neueren zu wechseln.',
  'database-blocked': 'Ridgeline ist noch in einem älteren Fenster offen. Schließ jenes und lade dieses neu.',
  'database-strange': 'Was unter dieser Adresse gespeichert ist, ist nicht so, wie Ridgeline es angelegt hat. Nichts wurde angerührt.',
  'migration-failed': 'Deine Strickstücke konnten nicht auf den neuen Stand gebracht werden und sind, wie sie waren. Lade die Seite neu.',
  'not-storable': 'Dies kann nicht notiert werden ({detail}). Nichts wurde geändert.',
  'no-such-garment': 'Dieses Strickstück ist nicht auf diesem Telefon.',
  'no-such-make': 'Dieses Teil ist nicht auf diesem Telefon.',
  'no-such-plan': 'Die Reihen dieses Teils sind nicht auf diesem Telefon.',
  'no-such-entry': 'Dieser Eintrag ist nicht im Protokoll.',
  'bad-id': 'Diese Adresse ist keine von Ridgeline.',
  'plan-missing': 'Abschnitt {part} eines Teils hat noch keine Reihen.',
  'at-the-end': 'Alle {rows} Reihen dieses Teils sind gestrickt.',
  'row-outside': 'Eine Reihe {row} gibt es in diesem Teil nicht; es hat {rows}.',
  'nothing-to-undo': 'Es gibt nichts zurückzunehmen.',
};
