import { ok, type Result } from '../knit/fault.ts';
import type { MakeKey } from '../progress/log.ts';
import { sentinelIn } from './beside/sentinel.ts';
import { type SmallKeep, smallKeep } from './beside/small-keep.ts';
import type { Box } from './box/box.ts';
import { openChanges } from './box/changes.ts';
import { type Door, openDoor } from './box/door.ts';
import { type Migration, migrations } from './box/schema.ts';
import { together } from './box/together.ts';
import { makeCalls } from './calls.ts';
import { noneWhenRefused } from './faults.ts';
import { randomId } from './ids.ts';
import type { Store } from './interface.ts';
import { lastSeenIn } from './place/last-seen.ts';
import {
  type InHand,
  inHandStores,
  readInHand,
  readSettings,
  type Seen,
  type Settings,
} from './place/reads.ts';
import { openTaps } from './place/taps.ts';

export type { Store } from './interface.ts';
export type { RowMeant } from './place/rows-together.ts';
export type { Tapped } from './place/taps.ts';

export interface StoreOptions {
  readonly name?: string;
  readonly factory?: () => IDBFactory | undefined;
  readonly spareFactory?: () => Promise<IDBFactory | undefined>;
  readonly keep?: SmallKeep | undefined;
  readonly now?: () => number;
  /** what will be asked first is read in the transaction that opens it: this make; without a key the last knitted */
  readonly first?: { readonly make?: MakeKey | undefined } | undefined;
  readonly migrations?: readonly Migration[];
  /** how long the box may give no answer before it is opened anew, ms */
  readonly patienceMs?: number;
  /** the same for work on the whole box, such as a backup read in, ms */
  readonly longPatienceMs?: number;
  /** the shortest wait before it is opened anew, ms */
  readonly pauseMs?: number;
}

/** Needed when storage fails, and there by then: the file comes once the first screen stands (src/app/start/later.ts). */
const frameOfOurs = () =>
  import('./box/frame-factory.ts').then(({ frameFactory }) => frameFactory()).catch(() => undefined);

export async function openStore(options: StoreOptions = {}): Promise<Result<Store>> {
  const name = options.name ?? 'ridgeline';
  const keep = 'keep' in options ? options.keep : smallKeep();
  const changes = openChanges(name);
  const door = openDoor({
    name,
    factory: options.factory ?? (() => globalThis.indexedDB),
    spareFactory: options.spareFactory ?? frameOfOurs,
    migrations: options.migrations ?? migrations,
    patienceMs: () => options.patienceMs ?? 8000,
    longPatienceMs: () => options.longPatienceMs ?? 300_000,
    pauseMs: options.pauseMs,
    onState: () => changes.tellHere({ kind: 'state' }),
  });
  const seen = lastSeenIn(keep, name);
  const start = await readStart(door, options.first, seen.guess());
  if (!start.ok) {
    changes.close();
    door.close();
    return start;
  }
  const { device, isEmpty, settings, inHand } = start.value;
  const sentinel = sentinelIn(keep, name);
  const box: Box = { door, sentinel, device, now: options.now ?? Date.now, tell: changes.tell };
  const taps = openTaps({ ...box, keep, name, seen });
  // before what is held goes into the box: that is a change
  seen.opened(options.first?.make, inHand);
  changes.listen(seen.changed);
  await taps.drain();
  return ok(makeCalls({ ...box, changes, taps, emptied: isEmpty, settings, seen }));
}

interface Start {
  /** the device's own letters, made once; a box that may only be read needs none */
  readonly device: string;
  /** it holds no garment */
  readonly isEmpty: boolean;
  readonly settings: Settings;
  /** the make that was asked for; undefined where there is none */
  readonly inHand: InHand | undefined;
}

/** What has to be known before anything can be asked, in one transaction: a start waits for it. */
async function readStart(
  door: Door,
  first: StoreOptions['first'],
  guess: Seen | undefined,
): Promise<Result<Start>> {
  const known = await door.read(['settings', 'summaries', ...(first ? inHandStores : [])], (tx) =>
    together(
      () => readSettings(tx),
      async () => {
        // nothing was ever begun, or the make is gone: said when it is asked for
        const inHand = first && (await readInHand(tx, first.make, guess).catch(noneWhenRefused));
        return { inHand, isEmpty: !inHand && (await tx.objectStore('summaries').count()) === 0 };
      },
    ),
  );
  if (!known.ok) return known;
  const [settings, found] = known.value;
  const start = { ...found, settings };
  const { device } = settings;
  if (typeof device === 'string') return ok({ ...start, device });
  if (door.state() === 'read only') return ok({ ...start, device: '' });
  return door.write(['settings'], async (tx) => {
    const stored = tx.objectStore('settings');
    const other = await stored.get('device');
    if (typeof other === 'string') return { ...start, device: other };
    const made = randomId(8);
    await stored.put(made, 'device');
    return { ...start, device: made };
  });
}
