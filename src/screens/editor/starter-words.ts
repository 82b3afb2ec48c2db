import type { StarterWords } from '../../knit/piece/form/starters.ts';
import { say } from '../../words/say.ts';

const wordNames = [
  ...([
    'back',
    'front',
    'sleeve',
    'neckband',
    'leftShoulder',
    'rightShoulder',
    'rib',
    'body',
    'armholes',
  ] as const),
  ...(['neck', 'shoulders', 'cuff', 'band', 'leftNeck', 'rightNeck', 'point', 'backNeck'] as const),
];

/** Names of pieces, parts and sections in her language. */
export const starterWords = (): StarterWords =>
  Object.fromEntries(
    wordNames.map((name) => [name, say(`editor.starter ${name}`)]),
  ) as unknown as StarterWords;
