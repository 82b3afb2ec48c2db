import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Machine } from './engine.ts';
import type { Tapping } from './kills.ts';
import { corruptionsOf, type Stored } from './stored.ts';

/** What a loss leaves behind: without it nobody can say afterwards whether app, browser or harness was at fault. */

const mark = 'ridgeline-began-here';

/** A profile that was taken away and made anew has no mark: then it is not the app that lost what was in it. */
export const markProfile = (profile: string): void => writeFileSync(join(profile, mark), '');

/** Rows of the log that are told, from its end. */
const TOLD = 12;

/** What lay in the browser when rows were missed, in one line: a database made anew, a shorter log or none of that. */
export async function tellLoss(
  machine: Machine,
  stored: Stored,
  { before, shown, tapped, lost, screen }: Tapping & { readonly lost: number; readonly screen: number },
): Promise<string> {
  const { place, entries } = stored;
  const sorted = entries.toSorted((a, b) => a.seq - b.seq);
  const beside = await machine.page
    .evaluate(async () => ({
      databases: (await indexedDB.databases?.())?.map(({ name, version }) => `${name} ${version}`),
      smallKeep: { ...localStorage },
      says: document.body.innerText.replace(/\s+/g, ' ').slice(0, 200),
    }))
    .catch((error: unknown) => String(error));
  return JSON.stringify({
    lost,
    before,
    shown,
    tapped,
    stored: place?.rows,
    screen,
    profile: existsSync(join(machine.profile, mark))
      ? 'as begun'
      : 'another one: it was taken away meanwhile',
    entries: entries.length,
    from: sorted[0] && new Date(sorted[0].at).toISOString(),
    now: new Date().toISOString(),
    last: sorted.slice(-TOLD).map(({ seq, kind, row }) => `${seq} ${kind} ${row}`),
    corruptions: corruptionsOf(stored),
    complaints: machine.complaints,
    beside,
  });
}
