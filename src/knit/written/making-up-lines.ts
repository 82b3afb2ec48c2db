import { type Phrase, phrasesOf } from '../making-up/phrases.ts';
import type { MakingUpStep } from '../making-up/step.ts';
import type { SaysLength } from './says-length.ts';
import type { JoiningWords } from './written-words.ts';

/**
 * A step of the making up as leaflets say it: what it is and, in a line each, what is told of it. The order is common
 * practice, no published source.
 */
export function makingUpLines(step: MakingUpStep, words: JoiningWords, length: SaysLength): string[] {
  // a table of functions by kind takes the step of its kind
  const title = (words.title[step.kind] as (step: MakingUpStep) => string | undefined)(step);
  const said = phrasesOf(step).flatMap((phrase) => saidOf(phrase, words, length));
  const titled =
    title === undefined ? said : [`${title}${step.nos ? words.nos(step.nos) : ''}${words.colon}`, ...said];
  return titled.reduce<string[]>((lines, line) => onOneLine(lines, line, words), []);
}

function saidOf(phrase: Phrase, { said }: JoiningWords, length: SaysLength): string | readonly string[] {
  const says = said[phrase.say] as
    | string
    | ((phrase: Phrase, length: SaysLength) => string | readonly string[]);
  return typeof says === 'string' ? says : says(phrase, length);
}

/** What leads on to the next words stands on one line with them. */
function onOneLine(lines: string[], line: string, { goesOn }: JoiningWords): string[] {
  const last = lines.at(-1);
  return last?.endsWith(':') === true ? [...lines.slice(0, -1), `${last} ${goesOn(line)}`] : [...lines, line];
}
