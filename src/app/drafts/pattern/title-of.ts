import type { ReadPattern } from '../../../knit/pattern/read-pattern.ts';

/** Longer ones are sentences; characters. */
const LONGEST = 60;

/** Heads of what stands above the rows, and lines of who made it: no garment is called so. */
const isHead =
  /^(abbreviations?|by|copyright|designed|free|gauge|instructions?|level|materials?|measurements?|needles?|notes?|page|pattern|sizes?|skill|stitch(?:es)?|tension|yarn|you will need|©)\b/i;

/**
 * What a text calls its garment: its first line, where that is a short one that bids nothing and names no piece; undefined
 * where it is not.
 */
export function titleOf({ lines, pieces }: Pick<ReadPattern, 'lines' | 'pieces'>): string | undefined {
  const [first] = lines;
  const isAbove = first?.kind === 'talk' || first?.kind === 'heading';
  if (!isAbove || first.rows.length > 0) return undefined;
  const words = first.text.trim().replace(/\s+/g, ' ');
  const isPiece = pieces.some(({ recipe }) => recipe.name.toLowerCase() === words.toLowerCase());
  const isName = words.length <= LONGEST && /\p{L}{3}/u.test(words) && !/[:;•]|[.!?,]$/.test(words);
  return isName && !isPiece && !isHead.test(words) ? words : undefined;
}
