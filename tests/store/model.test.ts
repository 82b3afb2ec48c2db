import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldPlace } from '../../src/progress/fold.ts';
import { openStore, type Store } from '../../src/store/store.ts';
import {
  copied,
  type Deed,
  deed,
  emptyNotebook,
  type Notebook,
  note,
  rowOf,
} from '../arbitraries/knitting-log.ts';
import { share } from '../by-turns.ts';
import { codesOf, given, LONG, nextName, nextRow, planOf, scarf, undoLast } from './scenario.ts';

const TOTAL = 30;

/** The app as a knitter has it: one box, windows on it that come and go. */
interface Windows {
  readonly open: () => Promise<Store>;
  tabs: Store[];
}

/** One window does a deed, and the store must agree with the notebook. */
class Do implements fc.AsyncCommand<Notebook, Windows> {
  constructor(
    readonly deed: Deed,
    readonly tab: number,
  ) {}
  check = (book: Readonly<Notebook>) => {
    const tried = copied(book, 'xx');
    note(tried, this.deed, TOTAL);
    return tried.entries.length > book.entries.length;
  };
  async run(book: Notebook, windows: Windows): Promise<void> {
    const store = windows.tabs[this.tab % windows.tabs.length] as Store;
    note(book, this.deed, TOTAL);
    given(await done(store, this.deed));
    await agrees(book, store);
  }
  toString = () => `${JSON.stringify(this.deed)} in window ${this.tab}`;
}

function done(store: Store, it: Deed) {
  if (it.do === 'finish') return nextRow(store, LONG);
  if (it.do === 'undo') return undoLast(store, LONG);
  if (it.do === 'go') return store.goTo(LONG, it.row, it.kind);
  if (it.do === 'note') return store.append(LONG, { kind: 'note', text: 'a marker' });
  return store.append(LONG, { kind: 'check', count: it.count });
}

async function agrees(book: Notebook, store: Store): Promise<void> {
  const place = given(await store.place(LONG));
  expect(place.rows).toBe(rowOf(book));
  expect(place.seq).toBe(book.entries.length);
  const entries = given(await store.entriesOf(LONG));
  expect(entries.map((entry) => [entry.kind, entry.row])).toEqual(book.entries.map((e) => [e.kind, e.row]));
  const { plan = planOf('scarf', 'long', TOTAL).id, ...told } = foldPlace(entries);
  expect({ ...told, plan }).toEqual({ rows: place.rows, plan: place.plan, seq: place.seq, at: place.at });
}

class Reload implements fc.AsyncCommand<Notebook, Windows> {
  check = () => true;
  async run(book: Notebook, windows: Windows): Promise<void> {
    for (const tab of windows.tabs) tab.close();
    windows.tabs = [await windows.open()];
    await agrees(book, windows.tabs[0] as Store);
  }
  toString = () => 'reload';
}

class SecondWindow implements fc.AsyncCommand<Notebook, Windows> {
  check = () => true;
  async run(book: Notebook, windows: Windows): Promise<void> {
    windows.tabs.push(await windows.open());
    await agrees(book, windows.tabs.at(-1) as Store);
  }
  toString = () => 'second window';
}

class BothAtOnce implements fc.AsyncCommand<Notebook, Windows> {
  check = (book: Readonly<Notebook>) => rowOf(book) < TOTAL;
  async run(book: Notebook, windows: Windows): Promise<void> {
    const [one, other = one] = windows.tabs as [Store, Store?];
    const row = rowOf(book) + 1;
    const answers = await Promise.all([one.finishRow(LONG, row), other.finishRow(LONG, row)]);
    expect(answers.flatMap(codesOf)).toEqual(['place-moved']);
    note(book, { do: 'finish' }, TOTAL);
    await agrees(book, one);
  }
  toString = () => 'the same row in both windows at once';
}

describe('the store against a notebook kept by hand', () => {
  it('agrees after every finish, undo, going back, reload and second window', async () => {
    const commands = fc.commands(
      [
        fc.tuple(deed(TOTAL), fc.nat(3)).map(([it, tab]) => new Do(it, tab)),
        fc.constant(new Reload()),
        fc.constant(new SecondWindow()),
        fc.constant(new BothAtOnce()),
      ],
      { maxCommands: 60 },
    );
    await fc.assert(
      fc.asyncProperty(commands, async (list) => {
        const factory = new IDBFactory();
        const name = nextName();
        const open = async () => given(await openStore({ name, factory: () => factory }));
        const windows: Windows = { open, tabs: [await open()] };
        const { garment, plans } = scarf('scarf', TOTAL);
        given(await (windows.tabs[0] as Store).saveGarment(garment, plans));
        try {
          await fc.asyncModelRun(() => ({ model: emptyNotebook('aa'), real: windows }), list);
        } finally {
          for (const tab of windows.tabs) tab.close();
        }
      }),
      { seed: 20260411, numRuns: share(60) },
    );
  }, 60_000);
});
