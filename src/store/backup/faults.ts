import { type Fault, fault } from '../../knit/fault.ts';

/** Why a file cannot be read in; nothing was changed by any of them. */
export const backupFaults = {
  'backup-too-large': 'This file is too large for a backup ({size} million characters, at most {most}).',
  'backup-not-json': 'This file is damaged or is no backup: it cannot be read as JSON.',
  'backup-not-ours': 'This file is not a Ridgeline backup.',
  'backup-newer':
    'This backup was made by a newer Ridgeline (version {version}). Update the app and try again.',
  'backup-damaged': 'This backup is damaged at {path} ({what}). Nothing was changed.',
  'backup-not-knittable':
    'In this backup the plan {plan} cannot be knitted at row {row}. Nothing was changed.',
} as const satisfies Record<string, string>;

export type BackupFaultCode = keyof typeof backupFaults;

export const backupFault = (
  code: BackupFaultCode,
  figures: Readonly<Record<string, number | string>> = {},
): Fault => fault(code, backupFaults[code], figures);
