import type { words as english } from '../en/recipe-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'no name': 'Gib ihm einen Namen.',
  blank: 'Hier fehlt eine Zahl.',
  'not a whole number': '„{typedText}“ ist keine ganze Zahl.',
  'not a measure': '„{typedText}“ ist keine Zahl über 0.',
  'number too small': '{foundNumber} ist zu wenig; es braucht mindestens {leastNumber}.',
  'part name twice': 'Ein anderer Arbeitsgang heißt auch „{name}“. Gib diesem einen anderen Namen.',
  'no such part':
    'Die Maschen kommen aus einem Arbeitsgang, der nicht davor steht. Wähle einen früheren Arbeitsgang.',
  'bound off': '„{name}“ ist abgekettet, dort liegen keine Maschen still. Lass „{name}“ geteilt enden.',
  'bad makes': 'Ein Teil wird 1- bis 20-mal gestrickt, nicht {makes}-mal.',
  'too much to plan':
    'Alle Reihen zusammen haben mehr als {mostStitches} Maschen, mehr, als auf einmal geplant werden kann. Nimm weniger Reihen, weniger Maschen oder weniger Teile.',
  'too many parts': 'Ein Teil hat höchstens {mostParts} Arbeitsgänge, nicht {parts}. Mach zwei Teile daraus.',
  'too many sections':
    'Ein Arbeitsgang hat höchstens {mostSections} Abschnitte, nicht {sections}. Fasse einige zusammen.',
  'part too long':
    'Ein Arbeitsgang hat höchstens {mostRows} Reihen, die Abkettreihe mitgezählt, nicht {rows}. Mach zwei Arbeitsgänge daraus.',
  'no parts': 'Das Teil hat noch keinen Arbeitsgang. Füge einen mit einem Anschlag hinzu.',
  'nothing picked up': 'Sag, entlang welcher Kante die Maschen aufgefasst werden und wie viele.',
  'bad stitches': 'Hier gehen 1 bis {mostStitches} Maschen, nicht {stitches}.',
  'bad rows': 'Ein Abschnitt hat höchstens {mostRows} Reihen, nicht {rows}.',
  'bad needle': 'Eine Nadel ist höchstens 50\u00a0mm dick.',
  'bad count': 'Hier braucht es ganze Zahlen.',
  'fabric multiple':
    'Im Muster „{fabric}“ gehen {stitches} Maschen nicht auf: Nimm {belowStitches} oder {aboveStitches} oder ein anderes Muster.',
  'split too wide':
    '„{name}“ lässt nur {haveStitches} Maschen übrig; die Arbeitsgänge danach nehmen mehr. Nimm hier weniger.',
  'split does not share':
    '„{name}“ lässt {leftStitches} Maschen übrig, die Arbeitsgänge danach nehmen {sumStitches}. Zusammen müssen sie alle nehmen.',
  'shaping needs more stitches':
    'Die Formung braucht {needStitches} Maschen, es sind nur {haveStitches} da. Forme seltener oder beginne mit mehr Maschen.',
  'mixed shaping':
    'Hier treffen zwei Formungen zusammen, die je eine eigene Reihe brauchen. Verschiebe eine um zwei Reihen.',
  'no centre stitch':
    'Es gibt keine mittlere Masche mit einer auf jeder Seite. Prüfe die Maschen rechts davon.',
  'shaping outside the section':
    'Das würde Reihe {row} formen, der Abschnitt hat aber {rows} Reihen. Gib ihm mehr Reihen oder forme seltener.',
  'edge step too large':
    'Am Rand können in einer Reihe eine oder zwei Maschen wegfallen oder dazukommen, nicht {byStitches}. Kette eine Gruppe ab oder schlage sie an.',
  'shaped twice': 'Reihe {row} wird an derselben Stelle zweimal gleich geformt. Behalte eines davon.',
  'group on the wrong side':
    'Reihe {row} ist eine {side} und beginnt {startsEdge}. Maschen {edge} kommen eine Reihe früher oder später.',
  'too many for one row':
    'Eine Reihe mit {stitches} Maschen hat Platz für {mostTimes} davon, nicht {times}. Verteile den Rest auf eine spätere Reihe.',
  'no gauge': '{pieceName} nennt keine Maschenprobe und lässt sich nicht umrechnen. Gib erst eine an.',
  'not as asked':
    'So lässt es sich nicht stricken. Was helfen kann: eine andere Größe, oder eine andere Nadel, damit deine Probe der geplanten näher kommt.',
  'bad gauge':
    'Eine solche Maschenprobe kann nicht sein. Zähle Maschen und Reihen auf einer flachen, gewaschenen Probe noch einmal.',
  'rows in words':
    'Seine Reihen sind Masche für Masche ausgeschrieben und lassen sich nicht umrechnen. Nimm die Maschenprobe, für die es geschrieben ist.',
  'bad weight': '{pieceName} kann nicht {grams} wiegen. Wiege noch einmal.',
  'plan disproved':
    'Der Plan nennt {expectedStitches} Maschen, gestrickt ergibt er {foundStitches}. Das ist ein Fehler in Ridgeline; nichts wurde gespeichert.',
  'repeat does not come out':
    'Der Rapport geht nicht auf: {spanStitches} Maschen lassen sich nicht durch {byStitches} teilen.',
  'shaping does not fit':
    '{rows} Reihen haben Platz für {mostTimes} Formreihen, nötig sind {times}. Gib mehr Reihen dazu, oder forme seltener.',
  'stitches left over': 'Die Reihe lässt {leftStitches} von {onNeedleStitches} Maschen ungestrickt.',
  'endless repeat': 'Der Rapport verbraucht keine Masche und endete nie. Gib ihm eine Masche dazu.',
  'turn on the wrong side':
    'Reihe {row} ist eine {side} und beginnt {startsEdge}; wenden kann sie nur vor dem anderen. Wende eine Reihe früher oder später.',
} as const satisfies Translation<typeof english>;
