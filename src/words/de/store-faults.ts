import type { words as english } from '../en/store-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'storage-full':
    'Das Gerät ist voll, darum konnte dies nicht notiert werden. Schaff etwas Platz und versuch es noch einmal.',
  'storage-refused':
    'Dieser Browser lässt Ridgeline nichts behalten, wie in einem privaten Fenster. Öffne es in einem gewöhnlichen Fenster.',
  'store-not-answering':
    'Der Browser antwortet nicht auf das Schreiben. Versuch es noch einmal; hilft das nicht, lade die Seite neu.',
  'database-newer':
    'Diese Strickstücke wurden mit einem neueren Ridgeline geöffnet. Hier lassen sie sich lesen, nicht ändern. Lade die Seite neu, um zum neueren zu wechseln.',
  'database-blocked': 'Ridgeline ist noch in einem älteren Fenster offen. Schließ jenes und lade dieses neu.',
  'database-strange':
    'Was unter dieser Adresse gespeichert ist, ist nicht so, wie Ridgeline es angelegt hat. Nichts wurde angerührt.',
  'migration-failed':
    'Deine Strickstücke konnten nicht auf den neuen Stand gebracht werden und sind, wie sie waren. Lade die Seite neu.',
  'not-storable': 'Dies kann nicht notiert werden ({detailText}). Nichts wurde geändert.',
  'text-too-long':
    'Dieser Text ist zu lang ({whereText}): Er hat {characters} Zeichen, und {mostCharacters} lassen sich behalten. Nichts wurde geändert; kürze ihn und versuch es noch einmal.',
  'photos-full':
    'Deine Fotos füllen eine Sicherung: Zusammen dürfen sie {mostMillions} Millionen Bytes haben. Sichere einige anderswo, lösche sie hier und versuch es noch einmal.',
  'no-such-garment': 'Dieses Strickstück ist nicht auf diesem Gerät.',
  'garment-there': 'Dieses Strickstück ist schon auf diesem Gerät. Es wurde nichts geändert.',
  'no-such-make': 'Dieses Teil ist nicht auf diesem Gerät.',
  'no-such-plan': 'Die Reihen dieses Teils sind nicht auf diesem Gerät.',
  'no-such-entry': 'Dieser Eintrag ist nicht im Protokoll.',
  'plan-missing': 'Arbeitsgang {part} eines Teils hat noch keine Reihen.',
  'at-the-end': 'Alle {rows} Reihen dieses Teils sind gestrickt.',
  'place-moved': 'Inzwischen ist Reihe {nextRow} dran, nicht Reihe {row}. Es wurde nichts notiert.',
  'plan-moved':
    'Die Reihen, die du gesehen hast, gelten nicht mehr: Das Teil wurde inzwischen neu geplant. Es wurde nichts geschrieben; sieh dir die Reihe an, die jetzt kommt.',
  'row-outside': 'Eine Reihe {row} gibt es in diesem Teil nicht; es hat {rows}.',
  'no-way-back':
    'Da ist nichts mehr zurückzunehmen: Es wurde schon zurückgenommen, oder inzwischen kam eine andere Sicherung herein.',
  'kept-unreadable':
    'Was du hier getippt hast, wurde in einer Form behalten, die dieses Ridgeline nicht lesen kann. Fang neu an; lesbare Texte bleiben.',
  'nothing-to-undo': 'Es gibt nichts zurückzunehmen.',
  'nothing to save': 'Es gibt noch nichts zu speichern.',
  'app-incomplete':
    'Ein Teil von Ridgeline konnte nicht geholt werden. Nichts wurde geändert. Lade die Seite neu, wenn möglich mit Netz.',
  'backup-too-large':
    'Diese Datei ist zu groß für eine Sicherung: Sie hat {sizeMillions} Millionen Zeichen, höchstens {mostMillions} können gelesen werden.',
  'backup-not-json':
    'Diese Datei ist beschädigt oder keine Sicherung. Wähle die Datei, die Ridgeline gespeichert hat, oder eine ältere.',
  'backup-not-ours': 'Diese Datei hat nicht Ridgeline gespeichert. Wähle eine andere.',
  'backup-newer':
    'Diese Sicherung hat ein neueres Ridgeline gespeichert (Version {version}). Lade die Seite mit Netz neu und öffne die Datei dann noch einmal.',
  'backup-damaged': 'Diese Sicherung ist bei {pathText} beschädigt. Nichts wurde geändert. Nimm eine ältere.',
  'backup-not-knittable':
    'In dieser Sicherung lassen sich die Reihen von {pieceName} ab Reihe {row} nicht stricken. Nichts wurde geändert.',
  'backup-without':
    'In der Sicherung fehlt {whatText}: {pathText} darin ist nicht, wie es sein soll. Auf diesem Gerät bleibt es, wie es ist; behalte eine ältere Sicherung, die es enthält.',
  'backup-too-full':
    'Was auf diesem Gerät ist, ergibt {sizeMillions} Millionen Zeichen, und in eine Sicherung passen höchstens {mostMillions}. Sichere einige Fotos anderswo, lösche sie hier und versuch es noch einmal.',
  'backup-file-refused':
    'Der Browser lässt Ridgeline diese Datei nicht mehr schreiben. Erlaub es noch einmal, oder wähle eine andere Datei.',
  'backup-file-gone':
    'Diese Datei konnte nicht geschrieben werden: Vielleicht wurde sie verschoben, oder ihr Speicher ist voll oder nicht da. Versuch es noch einmal, oder wähle eine andere Datei.',
  'document protected':
    'Diese Datei ist mit einem Passwort verschlossen. Öffne sie anderswo, speichere sie ohne, und wähle diese Kopie.',
  'document damaged':
    'Diese Datei ist beschädigt oder nicht ganz gespeichert. Hol sie noch einmal, oder kopiere ihren Text und füge ihn ein.',
  'document pictures only':
    'Diese Datei enthält Bilder von Seiten, keinen Text. Öffne sie anderswo: Viele Telefone finden die Buchstaben in einem Bild und lassen sie markieren und kopieren. Füge sie dann hier ein.',
  'document too long':
    'Diese Datei hat {pagesNumber} Seiten, gelesen werden bis zu {mostNumber}. Speichere die Seiten der Anleitung als eigene Datei.',
  'document too large':
    'Diese Datei ist zu groß: Sie hat {sizeMillions} Millionen Bytes, gelesen werden bis zu {mostMillions} Millionen. Kopiere ihren Text und füge ihn ein.',
  'document unknown':
    'In dieser Datei wurde kein Text gefunden. Gelesen werden PDF, .docx und einfacher Text; aus allem anderen kopiere den Text und füge ihn ein.',
  'link damaged':
    'Dieser Link ist beschädigt oder abgeschnitten. Kopiere ihn ganz, oder bitte um das Strickstück als Datei.',
  'link not a garment':
    'Dieser Link enthält kein Strickstück: {whereText} ist nicht, wie es sein soll. Nichts wurde geändert.',
  'link too long':
    'Dieser Link hat {characters} Zeichen; der eines Strickstücks hat höchstens {mostCharacters}. Bitte um das Strickstück als Datei.',
  'link version':
    'Diesen Link hat ein neueres Ridgeline gemacht (Version {version}). Lade die Seite mit Netz neu und öffne den Link dann noch einmal.',
  'text missing': 'Der Text, aus dem dieses Strickstück gelesen wurde, ist nicht hier.',
  'not stored': 'Der neue Plan konnte nicht behalten werden. Versuche es noch einmal.',
} as const satisfies Translation<typeof english>;
