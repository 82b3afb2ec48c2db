import { inOrder, knits, type LogEntry, type PlanId } from './log.ts';
import { deviceOf, goneOnFrom, plansIn } from './log-chain.ts';

/** Where devices that knitted without each other have left a make. */
export interface Way {
  /** id of the entry at its end */
  readonly end: string;
  /** rows worked, and of which plan */
  readonly rows: number;
  readonly plan: PlanId;
  /** letters of the device that went it */
  readonly device: string;
}

export interface Ways {
  /** the one that the place is on */
  readonly shown: Way | undefined;
  /** others that she has not been asked about */
  readonly open: readonly Way[];
  /** others that she has left */
  readonly left: readonly Way[];
}

/**
 * The ways that a make has gone where devices parted: by another plan, or to a row that is not on the way of the one
 * shown. A device that is merely not as far is no other way. Entries of one make, in any order.
 */
export function waysIn(entries: readonly LogEntry[]): Ways {
  const map = mapOf(entries);
  const shown = [...entries]
    .sort(inOrder)
    .filter(({ kind }) => knits(kind))
    .at(-1);
  if (shown === undefined) return { shown: undefined, open: [], left: [] };
  const settled = new Set(map.choices.flatMap(({ settles = [] }) => settles));
  const others = endsBeside(map, shown);
  const wayTo = (end: LogEntry) => wayOf(map, end);
  return {
    shown: wayTo(shown),
    open: others.filter(({ id }) => !settled.has(id)).map(wayTo),
    left: others.filter(({ id }) => settled.has(id)).map(wayTo),
  };
}

/** Ids of the ends that are left with going on from this one; undefined where no way of these entries ends there. */
export function leftBy(entries: readonly LogEntry[], end: string): readonly string[] | undefined {
  const chosen = entries.find(({ id }) => id === end);
  return chosen && endsBeside(mapOf(entries), chosen).map(({ id }) => id);
}

interface LogMap {
  readonly ends: readonly LogEntry[];
  /** the entry, the one before it, and so on to the first */
  readonly pathTo: (entry: LogEntry) => readonly LogEntry[];
  readonly planOf: (entry: LogEntry) => PlanId | undefined;
  /** choices between ways that still stand */
  readonly choices: readonly LogEntry[];
  /** those that were taken back: where they led, another entry led before them */
  readonly unchosen: ReadonlySet<LogEntry>;
}

function mapOf(entries: readonly LogEntry[]): LogMap {
  const before = goneOnFrom(entries);
  const goneOn = new Set(entries.map((entry) => before(entry)?.id));
  const undone = new Set(entries.map(({ undoes }) => undoes));
  const choices = entries.filter(({ settles }) => settles !== undefined);
  return {
    ends: [...entries].sort(inOrder).filter(({ id }) => !goneOn.has(id)),
    planOf: plansIn(entries),
    choices: choices.filter(({ id }) => !undone.has(id)),
    unchosen: new Set(choices.filter(({ id }) => undone.has(id))),
    pathTo: (entry) => {
      const path: LogEntry[] = [];
      for (let at: LogEntry | undefined = entry; at !== undefined; at = before(at)) path.push(at);
      return path;
    },
  };
}

const movedBy = ({ unchosen }: LogMap, path: readonly LogEntry[]): LogEntry | undefined =>
  path.find((entry) => knits(entry.kind) && !unchosen.has(entry));

/** Ends that do not lie on the way to this one. */
function endsBeside(map: LogMap, to: LogEntry): readonly LogEntry[] {
  const path = map.pathTo(to);
  const onPath = new Set(path);
  return map.ends.filter((end) => {
    const other = map.pathTo(end);
    const moved = movedBy(map, other);
    if (moved === undefined || onPath.has(moved)) return false;
    const parted = other.find((entry) => onPath.has(entry));
    const since = parted === undefined ? path : path.slice(0, path.indexOf(parted) + 1);
    return !since.some(
      (entry) => knits(entry.kind) && entry.row === moved.row && map.planOf(entry) === map.planOf(moved),
    );
  });
}

function wayOf(map: LogMap, end: LogEntry): Way {
  const moved = movedBy(map, map.pathTo(end)) ?? end;
  // '' where nothing names one: no plan is of that id, and the store says so
  return { end: end.id, rows: moved.row, plan: (map.planOf(moved) ?? '') as PlanId, device: deviceOf(moved) };
}
