import type { words as english } from '../en/recipe-faults.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  'no name': 'Gib ihm einen Namen.',
  blank: 'Hier fehlt eine Zahl.',
  'not a whole number': '„{typed}“ ist keine ganze Zahl.',
  'not a measure': '„{typed}“ ist keine Zahl über 0.',
  'number too small': '{found} ist zu wenig; es braucht mindestens {least}.',
  'part name twice': 'Ein anderer Arbeitsgang heißt auch „{name}“. Gib diesem einen anderen Namen.',
  'same name': 'Ein anderer Arbeitsgang heißt auch „{name}“. Gib diesem einen anderen Namen.',
  'no such part':
    'Die Maschen kommen aus einem Arbeitsgang, der nicht davor steht. Wähle einen früheren Arbeitsgang.',
  'bound off': '„{name}“ ist abgekettet, dort liegen keine Maschen still. Lass „{name}“ geteilt enden.',
  'bad makes': 'Ein Teil wird 1- bis 20-mal gestrickt, nicht {makes}-mal.',
  'too much to plan':
    'Alle Reihen zusammen haben mehr als {most} Maschen, mehr, als auf einmal geplant werden kann. Nimm weniger Reihen, weniger Maschen oder weniger Teile.',
  'too many parts': 'Ein Teil hat höchstens {most} Arbeitsgänge, nicht {parts}. Mach zwei Teile daraus.',
  'too many sections':
    'Ein Arbeitsgang hat höchstens {most} Abschnitte, nicht {sections}. Fasse einige zusammen.',
  'part too long':
    'Ein Arbeitsgang hat höchstens {most} Reihen, die Abkettreihe mitgezählt, nicht {rows}. Mach zwei Arbeitsgänge daraus.',
  'no parts': 'Das Teil hat noch keinen Arbeitsgang. Füge einen mit einem Anschlag hinzu.',
  'nothing picked up': 'Sag, entlang welcher Kante die Maschen aufgefasst werden und wie viele.',
  'bad stitches': 'Hier gehen 1 bis {most} Maschen, nicht {stitches}.',
  'bad rows': 'Ein Abschnitt hat höchstens {most} Reihen, nicht {rows}.',
  'bad needle': 'Eine Nadel ist höchstens 50 mm dick, nicht {needle} mm.',
  'bad count': 'Hier braucht es ganze Zahlen.',
  'fabric multiple':
    'Im Muster „{fabric}“ gehen {count} Maschen nicht auf: Nimm {below} oder {above} oder ein anderes Muster.',
  'split too wide':
    '„{name}“ lässt nur {have} Maschen übrig; die Arbeitsgänge danach nehmen mehr. Nimm hier weniger.',
  'split does not share':
    '„{name}“ lässt {left} Maschen übrig, die Arbeitsgänge danach nehmen {sum}. Zusammen müssen sie alle nehmen.',
  'not enough stitches':
    'In Reihe {row} braucht das {need} Maschen, es sind nur {have} da. Forme seltener oder beginne mit mehr Maschen.',
  'mixed shaping':
    'In Reihe {row} treffen zwei Formungen zusammen, die je eine eigene Reihe brauchen. Verschiebe eine um zwei Reihen.',
  'no centre stitch':
    'In Reihe {row} gibt es keine mittlere Masche mit einer auf jeder Seite. Prüfe die Maschen rechts davon.',
  'shaping outside the section':
    'Das würde Reihe {row} formen, der Abschnitt hat aber {rows} Reihen. Gib ihm mehr Reihen oder forme seltener.',
  'edge step too large':
    'Am Rand können in einer Reihe eine oder zwei Maschen wegfallen oder dazukommen, nicht {by}. Kette eine Gruppe ab oder schlage sie an.',
  'shaped twice': 'Reihe {row} wird an derselben Stelle zweimal gleich geformt. Behalte eines davon.',
  'group on the wrong side':
    'Reihe {row} ist eine {side}-Reihe und beginnt am {starts} Rand. Maschen am {edge} Rand kommen eine Reihe früher oder später.',
  'too many for one row':
    'Eine Reihe mit {stitches} Maschen hat Platz für {most} davon, nicht {times}. Verteile den Rest auf eine spätere Reihe.',
  'none left': 'Nach Reihe {row} wäre keine Masche mehr da. Forme seltener oder beginne mit mehr Maschen.',
  'no gauge': '{piece} nennt keine Maschenprobe und lässt sich nicht umrechnen. Gib erst eine an.',
  'bad gauge':
    'Eine solche Maschenprobe kann nicht sein. Zähle Maschen und Reihen auf einer flachen, gewaschenen Probe noch einmal.',
  'rows in words':
    'Seine Reihen sind Masche für Masche ausgeschrieben und lassen sich nicht umrechnen. Nimm die Maschenprobe, für die es geschrieben ist.',
  'bad weight': '{piece} kann nicht {grams} g wiegen. Wiege noch einmal.',
  'plan disproved':
    'Reihe {row} nennt {expected} Maschen, gestrickt ergibt sie {found}. Das ist ein Fehler in Ridgeline; nichts wurde gespeichert.',
  'repeat does not come out':
    'Der Rapport geht nicht auf: {span} Maschen lassen sich nicht durch {by} teilen.',
  'shaping does not fit':
    'Für {most} Formreihen ist Platz, nötig sind {times}. Gib mehr Reihen dazu, oder forme seltener.',
  'stitches left over': 'Die Reihe lässt {left} von {count} Maschen ungestrickt.',
  'endless repeat': 'Der Rapport verbraucht keine Masche und endete nie. Gib ihm eine Masche dazu.',
  'nothing to save': 'Es gibt noch nichts zu speichern.',
  'turn on the wrong side':
    'Reihe {row} ist eine {side} und beginnt am Rand {starts}; wenden kann sie nur vor dem anderen. Wende eine Reihe früher oder später.',
  rightEdge: 'rechten',
  leftEdge: 'linken',
};
