import type { Side } from '../knit/row/step.ts';
import type { StitchName } from '../knit/stitch.ts';
import type { CableName, Crossing, Gloss } from './gloss.ts';
import { languageFiles } from './language-files.ts';
import { wordMessage } from './say.ts';
import { type Speech, speech } from './settings.ts';

export function crossingOf(name: CableName): Crossing {
  if (name === 'rt' || name === 'lt') {
    return { leans: name === 'lt' ? 'left' : 'right', over: 1, under: 1, purled: false, open: false };
  }
  const split = /^(\d+)\/(\d+) ([lr])(p?)c$/.exec(name);
  if (split) {
    const [, over, under, lean, purl] = split;
    return {
      leans: lean === 'l' ? 'left' : 'right',
      over: Number(over),
      under: Number(under),
      purled: purl === 'p',
      open: false,
    };
  }
  const width = Number(name.slice(1, -1));
  const over = Math.floor(width / 2);
  const common = { over, under: width - over, purled: name.startsWith('t'), open: width % 2 === 1 };
  return { leans: name.endsWith('f') ? 'left' : 'right', ...common };
}

const isCable = (name: StitchName): name is CableName => /^([ct]\d+[fb]|\d+\/\d+ [lr]p?c|rt|lt)$/.test(name);

/** Loads the explanations in the language of the moment; the answer words any stitch, and either side, in its terms. */
export async function openGlossary(
  { language, terms }: Speech = speech.value,
): Promise<(name: StitchName | Side) => Gloss> {
  const { glossary, crossing, sides } = (await languageFiles[language].rest()).stitches;
  const glossOf = (name: StitchName | Side): Gloss => {
    if (name === 'RS' || name === 'WS') return sides[name];
    return isCable(name) ? crossing(name, crossingOf(name)) : glossary[name];
  };
  return (name) => {
    const { name: called, how } = glossOf(name);
    const inTerms = (text: string) => wordMessage(text, {}, { language, terms });
    return { name: inTerms(called), how: inTerms(how) };
  };
}
