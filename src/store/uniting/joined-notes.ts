/** So long a text of notes can be kept, characters. */
const LONGEST = 100_000;

/**
 * Notes that devices wrote without each other as one text, the earlier first: every line of each, those that are there
 * already once. What would not fit stays among the versions.
 */
export function joinedNotes(versions: readonly string[]): string {
  const lines: string[] = [];
  const there = new Set<string>();
  let length = 0;
  for (const version of versions) {
    const more = version.split('\n').filter((line) => !there.has(line));
    const size = more.reduce((sum, line) => sum + line.length + 1, 0);
    // before the first line there is no break
    if (length + size - 1 > LONGEST) continue;
    length += size;
    lines.push(...more);
    for (const line of more) there.add(line);
  }
  return lines.join('\n');
}
