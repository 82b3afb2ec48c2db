/** Words by which a pattern is known to be in a language; those of English weigh against them. */
const telling = {
  en: /(?<!\p{L})(?:knit|purl|rows?|sts?|stitch(?:es)?|cast|bind|rep|needles?|with)(?!\p{L})/giu,
  de: /(?<!\p{L})(?:maschen?|m\.|reihen?|rechts|links|stricken|str|abketten|anschlagen|zusstr|und|nadeln?|wiederholen)(?!\p{L})/giu,
  fr: /(?<!\p{L})(?:mailles?|rangs?|endroit|envers|rabattre|rab|monter|tricoter|jusqu|aiguilles?|ens|les|répéter)(?!\p{L})/giu,
} as const;

/** Fewer words tell nothing. */
const LEAST = 6;

/** The language of a text that is not the one patterns are read in; undefined where it is English, or too short to tell. */
export function otherTongue(text: string): 'de' | 'fr' | undefined {
  const count = (tongue: keyof typeof telling) => text.match(telling[tongue])?.length ?? 0;
  const [en, de, fr] = [count('en'), count('de'), count('fr')];
  const most = Math.max(de, fr);
  return most < LEAST || most <= 2 * en ? undefined : de > fr ? 'de' : 'fr';
}
