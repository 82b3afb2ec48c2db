import { inOrder, knits, type LogEntry, type PlanId } from './log.ts';

/**
 * Which entry each one went on from: the one that it names; else its own device's entry just before it in number;
 * else the last one that the log had. (A device numbers on from the highest that it knows, so its own number before
 * this one means that it went on from there.) Entries of one make, in any order.
 */
export function goneOnFrom(entries: readonly LogEntry[]): (entry: LogEntry) => LogEntry | undefined {
  const inTurn = [...entries].sort(inOrder);
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  /** by number, the newest of each device */
  const numbers = new Map<number, Map<string, LogEntry>>();
  for (const entry of inTurn) {
    const ofNumber = numbers.get(entry.seq) ?? new Map<string, LogEntry>();
    numbers.set(entry.seq, ofNumber.set(deviceOf(entry), entry));
  }
  const place = new Map(inTurn.map((entry, i) => [entry.id, i]));
  return (entry) => {
    const named = entry.follows === undefined ? undefined : byId.get(entry.follows);
    if (named !== undefined && inOrder(named, entry) < 0) return named;
    const own = numbers.get(entry.seq - 1)?.get(deviceOf(entry));
    if (own !== undefined) return own;
    // the last one with a lower number: those of the same number were written beside it, not before
    let at = (place.get(entry.id) ?? 0) - 1;
    while (at >= 0 && inTurn[at]?.seq === entry.seq) at -= 1;
    return inTurn[at];
  };
}

/** The letters of the device that wrote it. */
export const deviceOf = ({ id }: Pick<LogEntry, 'id'>): string => id.slice(0, id.indexOf('-'));

/** Of which plan an entry's row is one: the plan that it names, else that of the entry it went on from. */
export function plansIn(entries: readonly LogEntry[]): (entry: LogEntry) => PlanId | undefined {
  let before: ReturnType<typeof goneOnFrom> | undefined;
  return (entry) => {
    let at: LogEntry | undefined = entry;
    while (at !== undefined && at.plan === undefined) {
      before ??= goneOnFrom(entries);
      at = before(at);
    }
    return at?.plan;
  };
}

/**
 * The entry that tells the place, where the next one written has to name it (`follows`): after files were united the
 * numbers alone do not tell which of two it went on from. Undefined where they do.
 */
export function toBeNamed(entries: readonly LogEntry[]): string | undefined {
  const inTurn = [...entries].sort(inOrder);
  const told = inTurn.filter(({ kind }) => knits(kind)).at(-1);
  const last = inTurn.at(-1);
  if (told === undefined || last === undefined) return undefined;
  if (inTurn.at(-2)?.seq === last.seq) return told.id;
  const before = goneOnFrom(entries);
  let at: LogEntry | undefined = last;
  while (at !== undefined && !knits(at.kind)) at = before(at);
  return at === told ? undefined : told.id;
}
