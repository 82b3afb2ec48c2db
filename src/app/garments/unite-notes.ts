/**
 * Her notes where they were changed elsewhere while she typed: nothing of either is lost.
 * @param began what stood in the field when she began to type
 * @param typed what stands there now
 * @param stored what is stored by now
 */
export function uniteNotes(began: string, typed: string, stored: string): string {
  if (stored === began || stored === typed || stored === '') return typed;
  const added = typed.startsWith(began) ? typed.slice(began.length) : typed;
  if (added.trim() === '') return stored;
  return `${stored.trimEnd()}\n${added.trimStart()}`;
}
