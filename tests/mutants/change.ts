import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** A fault planted by hand: a text of a source in the place of another. */
export interface Change {
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

/** At how many places of its source a change could be made; it must be one. */
export const sitesOf = (root: string, { file, from }: Change): number =>
  readFileSync(join(root, file), 'utf8').split(from).length - 1;

/** Makes the changes in the copy at `root`. Throws a sentence where a source has not exactly one place for a change. */
export function makeChanges(root: string, changes: readonly Change[]): void {
  for (const change of changes) {
    const { file, from, to } = change;
    if (sitesOf(root, change) !== 1) throw new Error(`${file} has not exactly one place for the change.`);
    const path = join(root, file);
    writeFileSync(
      path,
      readFileSync(path, 'utf8').replace(from, () => to),
    );
  }
}
