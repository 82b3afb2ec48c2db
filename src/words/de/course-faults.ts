import type { words as english } from '../en/course-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'nothing left': 'Alle Reihen dieses Teils sind gestrickt; es bleibt nichts neu zu planen.',
  'shaping to come does not fit':
    '{times} Formreihen kommen noch, und {rows} Reihen haben Platz für {mostTimes}. Gib mehr Reihen, oder ribble auf.',
  'too few rows for its shaping':
    'Das wären zu wenige Reihen: In Reihe {row} wird geformt, es blieben aber nur {rows}. Gib mehr.',
  'no stretch ends there':
    'Keine Strecke dieses Arbeitsgangs kann bei {heightMm} enden. Wähle eine, die noch zu stricken ist, und eine Höhe über 0.',
  'too few rows before the neck':
    'Vor dem Ausschnitt sind nur noch {leftRows} Reihen zu stricken; früher als jetzt kann er nicht beginnen. Verschieb ihn um weniger Reihen.',
  'fewer rows than knitted':
    '{rows} Reihen sind weniger als die {workedRows}, die davon schon gestrickt sind. Gib mehr.',
  'cannot be taken up':
    '{offStitches} Maschen lassen sich in den restlichen Reihen nicht ausgleichen. Ribble einige Reihen auf, oder gib dem Teil mehr Reihen.',
  'measure again':
    '{measuredMm} kann kaum sein: {plannedMm} waren für diese Reihen geplant. Bitte miss noch einmal.',
  'no neck ahead':
    'Der Halsausschnitt lässt sich nur verschieben, solange das Teil darunter gestrickt wird, und um eine gerade Zahl von Reihen.',
  'no lifeline': 'Unter Reihe {fromRow} liegt kein Sicherungsfaden.',
  'no firm ground': 'Unter Reihe {fromRow} wurde nirgends gezählt, dass es stimmt.',
  'nothing to rip': 'Reihe {row} liegt nicht unter Reihe {fromRow}; da ist nichts aufzuribbeln.',
  'row outside': 'Dieses Teil hat die Reihen 1 bis {rows}; Reihe {row} ist keine davon.',
  'all done': 'Beide sind zu Ende gestrickt.',
  'not level':
    'Sie liegen {rows} Reihen auseinander. Stricke das mit weniger Reihen allein, bis beide gleich weit sind.',
  'sides differ':
    'Eines kommt zu einer Hinreihe, das andere zu einer Rückreihe; hier können sie keine Nadel teilen.',
} as const satisfies Translation<typeof english>;
