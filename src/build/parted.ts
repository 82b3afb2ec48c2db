import type { Language } from '../words/languages.ts';
import { asBuilt } from './as-built.ts';

/**
 * Where a long word may be parted, for a browser that has no rules for it: in large letters it would be broken anywhere,
 * and without a hyphen. Words of some twelve letters and more; a shorter one goes to the next line. None of them names
 * what is kept (a piece, a section, a colour): what is typed, sent and compared has no hidden letters.
 */
const long: Partial<Record<Language, string>> = {
  de:
    'V-Aus|schnitt U-Boot-Aus|schnitt Ab|foto|grafieren abzu|foto|grafieren abge|schnitten abge|kettet ameri|kanisch ange|fangen Arbeits|gäng Armloch|tiefe ' +
    'aufein|ander|nähen aufge|fasst aufge|ribbelt aufzu|ribbeln ausge|schrieben Ausschnitt|breite Ausschnitt|tiefe ' +
    'darüber|ziehen dazu|schreiben Doppel|masche Dreiviertel|stunde durch|gesehen Eingabe|taste einge|rechnet einge|setzt ' +
    'Ein|stellungen Ent|scheidung ent|scheidest Fertig|stellen gewöhn|lich gleich|mäßig Handgelenk|umfang ' +
    'heraus|gestrickt heraus|kommt hinein|stechen hinzu|fügen hinüber|nehmen Markie|rungen Maschen|glied Maschen|markierer Maschen|probe ' +
    'Maschen|raffer Maschen|säule Maschen|stich Maschen|zahl Knopf|leiste Matratzen|stich Nadel|stärke neben|ein|ander Oberarm|umfang ' +
    'Rechts|stricken Reihen|anfang Reihen|notiz Rücken|breite Schlupf|ausschnitt Schreib|weise Schulter|punkt ' +
    'Sicherungs|datei Sicherungs|faden Sicherungs|fäden spiegel|gleich Start|bildschirm Still|gelegt Strick|zeit Teil|stücke ' +
    'über|ein|ander über|lappen über|schnitten über|schreibe unter|scheidet Unter|brechung unvoll|ständig veröffent|licht ' +
    'ver|schlossen Viertel|punkt Vor|schriften wahr|schein|lichst wahr|schein|lich weiter|geben weiter|gegeben weiter|machen ' +
    'weiter|strick Wieder|holung wieder|holen zurück|genommen zurück|nehmen zurück|zunehmen zusammen|führ ' +
    'zusammen|geführt zusammen|genäht zusammen|komm zusammen|näh zusammen|passt zusammen|strick zusammen|zieh',
};

/** A language's text with soft hyphens in its long words. */
export function withPlaces(text: string, language: Language): string {
  const places = new Map(
    (long[language] ?? '').split(' ').map((word) => [word.replaceAll('|', '').toLowerCase(), word]),
  );
  places.delete('');
  if (places.size === 0) return text;
  // the longest first: one may begin as another does
  const all = [...places.keys()].sort((a, b) => b.length - a.length).join('|');
  return text.replace(new RegExp(`(?<!\\p{L})(?:${all})`, 'giu'), (found) => {
    let at = 0;
    const marked = places.get(found.toLowerCase()) ?? found;
    return [...marked].map((letter) => (letter === '|' ? '\u00ad' : found[at++])).join('');
  });
}

export const parted = asBuilt('parted-words', withPlaces);
