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
  change(part: (now: Sentinel) => Partial<Sentinel>): void;
}

export function sentinelIn(keep: SmallKeep | undefined, box: string): SentinelKeeper {
  const key = `${box}.sentinel`;
  const read = (): Sentinel => {
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
  return {
    read,
    change(part) {
      const now = read();
      writeJson(keep, key, { ...now, ...part(now) });
    },
  };
}
