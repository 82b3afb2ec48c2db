import { useState } from 'preact/hooks';
import { readOr, store } from '../app/store.ts';
import type { LogEntry } from '../progress/log.ts';
import { took } from '../progress/took.ts';
import type { PlaceRecord } from '../store/records.ts';
import { say } from '../words/say.ts';
import { saysDuration } from '../words/time.ts';
import { useFresh } from './use-fresh.ts';

/** What these makes took her, from the log: rows, sittings, days, hours. */
export function TookLine({
  garment,
  places,
}: {
  readonly garment: string;
  readonly places: readonly PlaceRecord[];
}) {
  const [entries, setEntries] = useState<readonly LogEntry[]>([]);
  useFresh(async () => setEntries(readOr(await (await store()).entriesOfGarment(garment)) ?? []), {
    garment,
  });
  const behindMs = new Date().getTimezoneOffset() * 60_000;
  const made = took(
    places.map(({ id }) => id),
    entries,
    behindMs,
  );
  if (made === undefined) return null;
  const facts = [
    say('partEnd.tookRows', { count: places.reduce((sum, { total }) => sum + total, 0) }),
    say('partEnd.tookSittings', { count: made.sittings }),
    ...(made.days > 1 ? [say('partEnd.tookDays', { count: made.days })] : []),
    ...(made.workedMs === undefined ? [] : [saysDuration(made.workedMs)]),
  ];
  return <p class="took">{facts.join(' · ')}</p>;
}
