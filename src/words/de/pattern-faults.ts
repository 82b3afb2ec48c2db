import type { words as english } from '../en/pattern-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'stitch expected':
    'In Spalte {column} dieser Zeile wird eine Masche erwartet. Ändere den Text dort, oder lass die Zeile weg.',
  'stitch or repeat expected':
    'In Spalte {column} dieser Zeile wird eine Masche oder eine Wiederholung erwartet. Ändere den Text dort, oder lass die Zeile weg.',
  'bracket expected':
    'Eine Klammer ist noch offen: In Spalte {column} dieser Zeile wird „{bracketText}“ erwartet. Schließ sie dort.',
  'nothing before the repeat':
    'In Spalte {column} dieser Zeile soll etwas wiederholt werden, und davor steht keine Masche. Schreib aus, was wiederholt wird.',
  'nested too deep': 'Hier stehen {depth} Klammern ineinander. Schreib die inneren aus.',
  'work after a turn': 'Nach dem Wenden wird noch gestrickt. Schreib das als eigene Reihe.',
  'not enough stitches':
    'Hier werden {needStitches} Maschen gebraucht, {haveStitches} sind auf der Nadel. Prüfe die Zahl vor dieser Reihe.',
  'bound off too many':
    'Hier werden {wantedStitches} Maschen abgekettet, {haveStitches} sind auf der Nadel. Prüfe die Zahl vor dieser Reihe.',
  'too many stitches':
    '{stitches} Maschen sind mehr, als eine Nadel fasst. Prüfe die Zahlen in dieser Zeile.',
  'too long': 'Ein Arbeitsgang hat höchstens {mostRows} Reihen. Prüfe die Zahlen in dieser Zeile.',
  'too many pieces read':
    'Ein Strickstück hat höchstens {mostPieces} Teile. Ab hier wird nichts mehr gelesen: Kopiere den Rest als eigenes Strickstück.',
  'too many parts begun':
    '„{pieceName}“ wird hier mehr als {mostTimes} Mal begonnen. Ab hier wird nichts mehr gelesen: Gib dem nächsten Teil eine eigene Überschrift.',
  'count contradicts':
    'Der Text nennt {statedStitches} Maschen; nach seinen Anweisungen bleiben {foundStitches}. Eines von beiden stimmt nicht.',
  'side differs':
    'Der Text nennt dies eine {saidSide}; vom Anfang gezählt ist es eine {foundSide}. Prüfe, wie viele Reihen davor liegen.',
  'worked in rounds':
    'Hier wird in Runden gestrickt, und Runden zählen hier nicht als Reihen. Die Zeile bleibt in ihren eigenen Worten; nenne die Maschen danach, oder schreib sie in Reihen.',
  'count not known':
    'Um {changeStitches} gleichmäßig zu verteilen, muss die Maschenzahl bekannt sein. Nenne sie vor dieser Reihe.',
  'no marker': 'In dieser Reihe liegt kein bekannter Markierer mehr voraus. Sag erst, wo er sitzt.',
  'centre not in the middle':
    '{stitches} Maschen können nicht {centreStitches} in der Mitte haben. Beide müssen gerade oder beide ungerade sein.',
  'nothing on the needle':
    'Hier sind keine Maschen auf der Nadel. Erst anschlagen, auffassen oder wieder aufnehmen.',
  'nothing rests': 'Hier ruhen keine bekannten Maschen. Sag erst, welche stillgelegt werden.',
  'nothing to match': 'Es gibt keine erste Seite, der diese gleichen könnte. Schreib die erste aus.',
  'stitches wait':
    'Hier bleiben {stitches} Maschen liegen, und der Text sagt nicht, was aus ihnen wird. Schreib darunter, was mit ihnen geschieht.',
  'no rows to repeat':
    'Hier sind keine Reihen bekannt, die wiederholt werden könnten. Schreib sie vor diese Zeile.',
  'row not known': 'Reihe {rowName} ist hier nicht bekannt. Schreib sie vor diese Zeile.',
  'piece not known': '„{pieceName}“ ist hier nicht bekannt. Stell dieses Teil voran.',
  'place not known':
    'Wo das ist, ist hier nicht bekannt. Nenne stattdessen die Länge oder die Zahl der Reihen.',
  'longer already':
    'Mit den Reihen davor ist das Teil schon {overMm} länger als die {wantedMm}, die hier verlangt sind. Prüfe Maschenprobe und Reihen.',
  'fabric not known':
    'Wie „{name}“ gestrickt wird, steht nicht vor dieser Zeile. Schreib die Reihen davor, oder nenne ein Muster, das dort steht.',
  'not a multiple':
    '{stitches} Maschen sind nicht durch {ofStitches} teilbar plus {plusStitches}; {name} braucht das. Prüfe die Zahl davor.',
  'pattern row does not come out':
    'Reihe {row} braucht {takesStitches} Maschen für einen Rapport und geht mit {stitches} Maschen nicht auf (teilbar durch {ofStitches} plus {plusStitches}).',
  'pattern does not return':
    'Nach seinen {rows} Reihen hat das Muster {afterStitches} Maschen, begonnen hat es mit {startStitches}.',
  'sizes differ':
    'Hier stehen nicht so viele Zahlen, wie die Anleitung Größen hat ({sizes}). Nenne für jede Größe eine Zahl, oder nimm eine Größe allein.',
  'rows already worked': 'Diese Strecke hat schon {workedRows} Reihen; {rows} kann sie nicht haben.',
  'side of the last row':
    'Mit {rows} Reihen begänne die nächste auf der anderen Seite. Eine Reihe mehr oder weniger.',
  'text reads otherwise':
    'Der Text wird nicht mehr so gelesen wie beim Stricken dieser Reihen. Die Reihen bleiben, wie sie sind.',
  'no sizes': 'Wähle eine Größe.',
} as const satisfies Translation<typeof english>;
