import { readJson, type SmallKeep, writeJson } from './small-keep.ts';

/** What this device knows of its box without opening it, so that a box that vanished is noticed. */
export interface Sentinel {
  readonly garments: number;
  /** entries logged on this device so far */
  readonly entries: number;
  /** when the last backup was taken, ms since 1970, and how many entries there were; 0 when none */
  readonly backupAt: number;
  readonly backupEntries: number;
}

const none: Sentinel = { garments: 0, entries: 0, backupAt: 0, backupEntries: 0 };

export interface SentinelKeeper {
  read(): Sentinel;
  /** `soon`: not before what is being done is done, since a row comes to the screen first */
  change(part: (now: Sentinel) => Partial<Sentinel>, soon?: boolean): void;
}

export function sentinelIn(keep: SmallKeep | undefined, box: string): SentinelKeeper {
  const key = `${box}.sentinel`;
  const waiting: Parameters<SentinelKeeper['change']>[0][] = [];
  const stored = (): Sentinel => {
    const found = readJson(keep, key) as Partial<Record<keyof Sentinel, unknown>> | null;
    const number = (name: keyof Sentinel) => {
      const value = found?.[name];
      return typeof value === 'number' && Number.isFinite(value) ? value : none[name];
    };
    return {
      garments: number('garments'),
      entries: number('entries'),
      backupAt: number('backupAt'),
      backupEntries: number('backupEntries'),
    };
  };
  const read = () => {
    let now = stored();
    for (const part of waiting) now = { ...now, ...part(now) };
    return now;
  };
  const write = () => {
    // a change that could not wait has taken along what did
    if (waiting.length === 0) return;
    writeJson(keep, key, read());
    waiting.length = 0;
  };
  return {
    read,
    change: (part, soon) => {
      const isFirst = waiting.push(part) === 1;
      if (!soon) write();
      else if (isFirst) setTimeout(write);
    },
  };
}
