import * as v from 'valibot';
import { type Fault, fault, ok, type Result, refuse } from '../../knit/fault.ts';
import { jsonTrouble } from '../shapes/json-guard.ts';
import { beyondUse } from './at-the-door.ts';
import { BACKUP_FORMAT, BACKUP_LIMITS, BACKUP_VERSION, type Backup, backupDocument } from './document.ts';
import { hangsTogether } from './hangs-together.ts';
import { provePlans } from './prove-plans.ts';

/** What makes each version the next one, from 1 on; never removed: old files stay readable for ever. */
const upgrades: readonly ((document: Record<string, unknown>) => Record<string, unknown>)[] = [
  // all that it has is as it was; what has come may be missing
  (document) => ({ ...document, version: 2 }),
];

/**
 * The one door for a backup file. Reads it whole and hands on only what is valid in every part; nothing is stored.
 * @param from a file that this box has just made holds what is in it, whatever that is
 * @returns the backup, brought to the newest version, or a fault (see `StoreFaults`)
 */
export function readBackup(text: string, from: 'elsewhere' | 'this box' = 'elsewhere'): Result<Backup> {
  if (text.length > BACKUP_LIMITS.size) {
    return refuse(
      fault('backup-too-large', {
        sizeMillions: inMillions(text.length),
        mostMillions: inMillions(BACKUP_LIMITS.size),
      }),
    );
  }
  const noBackup = oddBeginning(text.slice(0, BEGINNING));
  if (noBackup !== undefined) return refuse(noBackup);
  const json = parse(text);
  if (json === undefined) return refuse(fault('backup-not-json'));
  const known = ofOurs(json);
  if (known !== undefined) return refuse(known);
  const trouble = jsonTrouble(json, BACKUP_LIMITS);
  if (trouble !== undefined) return refuse(damaged(trouble.path));
  const read = v.safeParse(backupDocument, upgraded(json as Record<string, unknown>), { abortEarly: true });
  if (!read.success) return refuse(damaged(v.getDotPath(read.issues[0]) ?? ''));
  const odd = from === 'elsewhere' ? beyondUse(read.output) : undefined;
  const loose = hangsTogether(read.output) ?? odd ?? provePlans(read.output.plans);
  return loose === undefined ? ok(read.output) : refuse(loose);
}

/** So much of a file, in characters, tells whether it can be a backup at all. */
export const BEGINNING = 1000;

/** What is wrong with a file that begins so; undefined where it may be a backup and has to be read. */
export function oddBeginning(beginning: string): Fault | undefined {
  const [first] = unmarked(beginning).trimStart();
  if (first === undefined || first === '{') return undefined;
  return fault(first === '[' ? 'backup-not-ours' : 'backup-not-json');
}

/** some systems put a mark before the text of a file */
const unmarked = (text: string): string => text.replace(/^\uFEFF/, '');

const inMillions = (characters: number): number => Math.ceil(characters / 1e6);

function parse(text: string): unknown {
  try {
    return JSON.parse(unmarked(text));
  } catch {
    return undefined;
  }
}

function ofOurs(json: unknown): Fault | undefined {
  // of a number, a text or a list there is no format either
  const { format, version } = (json ?? {}) as Record<string, unknown>;
  if (format !== BACKUP_FORMAT) return fault('backup-not-ours');
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) return damaged('version');
  return version > BACKUP_VERSION ? fault('backup-newer', { version }) : undefined;
}

function upgraded(document: Record<string, unknown>): Record<string, unknown> {
  let now = document;
  for (let from = Number(document.version); from < BACKUP_VERSION; from += 1)
    now = upgrades[from - 1]?.(now) ?? now;
  return now;
}

/** A path of the file, or its own name where all of it is meant. */
const damaged = (path: string): Fault =>
  fault('backup-damaged', { pathText: path.slice(0, 120) || 'backup' });
