import { guessesIn } from '../knit/piece/gauges.ts';
import type { Recipe } from '../knit/piece/recipe.ts';
import { saysFabric } from '../words/craft.ts';
import { say } from '../words/say.ts';

/** Which fabrics have a figure that nobody measured, and what it was guessed from. Needs 'gauge' and 'craft'. */
export function Guesses({ pieces }: { readonly pieces: readonly Recipe[] }) {
  const guesses = guessesIn(pieces);
  if (guesses.length === 0) return null;
  return (
    <ul class="field-hint" role="list">
      {guesses.map(({ fabric, from }) => (
        <li key={`${fabric} ${from}`}>
          {say('gauge.guessed', { fabric: saysFabric(fabric), from: saysFabric(from) })}
        </li>
      ))}
    </ul>
  );
}
