import type { words as english } from '../en/pattern-faults.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  'not understood':
    'In Spalte {column} dieser Zeile wird {expected} erwartet. Ändere den Text dort, oder lass die Zeile weg.',
  'nested too deep': 'Hier stehen {depth} Klammern ineinander. Schreib die inneren aus.',
  'not enough stitches':
    'Hier werden {need} Maschen gebraucht, {have} sind auf der Nadel. Prüfe die Zahl vor dieser Reihe.',
  'bound off too many':
    'Hier werden {wanted} Maschen abgekettet, {have} sind auf der Nadel. Prüfe die Zahl vor dieser Reihe.',
  'too many stitches': '{count} Maschen sind mehr, als eine Nadel fasst. Prüfe die Zahlen in dieser Zeile.',
  'too long': 'Ein Abschnitt hat höchstens {most} Reihen. Prüfe die Zahlen in dieser Zeile.',
  'too many pieces read':
    'Ein Strickstück hat höchstens {most} Teile. Ab hier wird nichts mehr gelesen: Kopiere den Rest als eigenes Strickstück.',
  'too many parts begun':
    '{piece} wird hier mehr als {most} Mal begonnen. Ab hier wird nichts mehr gelesen: Gib dem nächsten Teil eine eigene Überschrift.',
  'count contradicts':
    'Der Text nennt {stated} Maschen; nach seinen Anweisungen bleiben {found}. Eines von beiden stimmt nicht.',
  'side differs':
    'Der Text nennt dies eine {said}; vom Anfang gezählt ist es eine {found}. Prüfe, wie viele Reihen davor liegen.',
  'count not known':
    'Um {change} gleichmäßig zu verteilen, muss die Maschenzahl bekannt sein. Nenne sie vor dieser Reihe.',
  'no marker': 'In dieser Reihe liegt kein bekannter Markierer mehr voraus. Sag erst, wo er sitzt.',
  'centre not in the middle':
    '{count} Maschen können nicht {centre} in der Mitte haben. Beide müssen gerade oder beide ungerade sein.',
  'nothing on the needle':
    'Hier sind keine Maschen auf der Nadel. Erst anschlagen, auffassen oder wieder aufnehmen.',
  'nothing rests': 'Hier ruhen keine bekannten Maschen. Sag erst, welche stillgelegt werden.',
  'nothing to match': 'Es gibt keine erste Seite, der diese gleichen könnte. Schreib die erste aus.',
  'no rows to repeat':
    'Hier sind keine Reihen bekannt, die wiederholt werden könnten. Schreib sie vor diese Zeile.',
  'row not known': 'Reihe {row} ist hier nicht bekannt. Schreib sie vor diese Zeile.',
  'piece not known': '{piece} ist hier nicht bekannt. Stell dieses Teil voran.',
  'place not known':
    'Wo das ist, ist hier nicht bekannt. Nenne stattdessen die Länge oder die Zahl der Reihen.',
  'longer already':
    'Mit den Reihen davor ist das Teil schon {over} länger als die {wanted}, die hier verlangt sind. Prüfe Maschenprobe und Reihen.',
  'not a multiple':
    '{count} Maschen sind nicht durch {of} teilbar plus {plus}; {name} braucht das. Prüfe die Zahl davor.',
  'pattern row does not come out':
    'Reihe {row} braucht {takes} Maschen für einen Rapport und geht mit {count} Maschen nicht auf (teilbar durch {of} plus {plus}).',
  'pattern does not return':
    'Nach seinen {rows} Reihen hat das Muster {after} Maschen, begonnen hat es mit {start}.',
  'sizes differ':
    'Die Größen stimmen hier nicht überein. Nenne für jede Größe eine Zahl, oder nimm eine Größe allein.',
  'rows already worked': 'Diese Strecke hat schon {worked} Reihen; {rows} kann sie nicht haben.',
  'side of the last row':
    'Mit {rows} Reihen begänne die nächste auf der anderen Seite. Eine Reihe mehr oder weniger.',
  'text reads otherwise':
    'Der Text wird nicht mehr so gelesen wie beim Stricken dieser Reihen. Die Reihen bleiben, wie sie sind.',
  'text missing': 'Der Text, aus dem dieses Strickstück gelesen wurde, ist nicht hier.',
  'not stored': 'Der neue Plan konnte nicht aufgehoben werden. Versuche es noch einmal.',
  'no sizes': 'Wähle eine Größe.',
};
