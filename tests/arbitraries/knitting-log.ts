import fc from 'fast-check';
import type { LogEntry } from '../../src/progress/log.ts';

/** What a knitter does to one make. */
export type Deed =
  | { do: 'finish' }
  | { do: 'undo' }
  | { do: 'go'; row: number; kind: 'place' | 'rip back' }
  | { do: 'note' }
  | { do: 'check'; count: number };

export const deed = (total: number): fc.Arbitrary<Deed> =>
  fc.oneof(
    { weight: 6, arbitrary: fc.constant<Deed>({ do: 'finish' }) },
    { weight: 3, arbitrary: fc.constant<Deed>({ do: 'undo' }) },
    {
      weight: 1,
      arbitrary: fc.record({
        do: fc.constant('go' as const),
        row: fc.nat(total),
        kind: fc.constantFrom('place' as const, 'rip back' as const),
      }),
    },
    { weight: 1, arbitrary: fc.constant<Deed>({ do: 'note' }) },
    { weight: 1, arbitrary: fc.nat(40).map((count): Deed => ({ do: 'check', count })) },
  );

/** A notebook kept by hand: the changes that stand, the newest last, and every entry written so far. */
export interface Notebook {
  readonly device: string;
  readonly entries: LogEntry[];
  readonly steps: { id: string; row: number }[];
  at: number;
}

export const emptyNotebook = (device: string): Notebook => ({
  device,
  entries: [],
  steps: [],
  at: 1_000_000,
});

/** The same notebook in another's hands. */
export const copied = (book: Notebook, device: string): Notebook => ({
  device,
  entries: [...book.entries],
  steps: [...book.steps],
  at: book.at,
});

export const rowOf = (book: Notebook): number => book.steps.at(-1)?.row ?? 0;

/** Writes a deed down as the app would; deeds that cannot be done (undo of nothing, a row past the end) are left out. */
export function note(book: Notebook, it: Deed, total: number, gapMs = 60_000): void {
  const row = rowOf(book);
  const seq = Math.max(0, ...book.entries.map((entry) => entry.seq)) + 1;
  book.at += gapMs;
  const base = {
    plan: 'g/p/0/s/1' as const,
    id: `${book.device}-${String(seq).padStart(4, '0')}`,
    make: 'g/p/0/1' as const,
    seq,
    at: book.at,
  };
  const move = (kind: LogEntry['kind'], to: number) => {
    // a move to the row where she is already changes nothing that an undo could take back
    if (to !== row) book.steps.push({ id: base.id, row: to });
    book.entries.push({ ...base, kind, row: to });
  };
  if (it.do === 'finish' && row < total) move('row', row + 1);
  if (it.do === 'go' && it.row !== row) move(it.kind, it.row);
  if (it.do === 'note') book.entries.push({ ...base, kind: 'note', row, text: 'a marker' });
  if (it.do === 'check') book.entries.push({ ...base, kind: 'check', row, count: it.count });
  if (it.do === 'undo') {
    const undone = book.steps.pop();
    if (undone !== undefined)
      book.entries.push({ ...base, kind: 'undo', row: rowOf(book), undoes: undone.id });
  }
}

/** A log of one make, with the row that the notebook says. */
export const knittingLog = (
  total = 40,
): fc.Arbitrary<{ entries: LogEntry[]; row: number; steps: number[] }> =>
  fc.array(deed(total), { maxLength: 60 }).map((deeds) => {
    const book = emptyNotebook('aa');
    for (const it of deeds) note(book, it, total);
    return { entries: book.entries, row: rowOf(book), steps: book.steps.map((step) => step.row) };
  });

/** Logs of up to four devices that went on from the same beginning, each without the others. */
export const partedLogs = (total = 40): fc.Arbitrary<LogEntry[][]> =>
  fc
    .tuple(
      fc.array(deed(total), { maxLength: 20 }),
      fc.array(fc.array(deed(total), { maxLength: 20 }), { minLength: 2, maxLength: 4 }),
    )
    .map(([together, apart]) => {
      const shared = emptyNotebook('aa');
      for (const it of together) note(shared, it, total);
      return apart.map((deeds, i) => {
        const own = copied(shared, `d${i}`);
        for (const it of deeds) note(own, it, total);
        return own.entries;
      });
    });
