import { deflateSync, strToU8 } from 'fflate';
import { openFile } from '../../../src/app/backup/backup.ts';
import { keepUp } from '../../../src/app/backup/backup-file.ts';
import { keptFileLate } from '../../../src/app/backup/kept-file-late.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { BACKUP_VERSION } from '../../../src/store/backup/document.ts';
import { backupFile, exportAll } from '../../../src/store/backup/export.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import type { StoreFaults } from '../../../src/store/faults.ts';
import { garmentToLink, LONGEST_LINK, linkToGarment } from '../../../src/store/share/link.ts';
import { withKeptFile } from '../../app/backup/kept-file.ts';
import { knittedBox } from '../../store/knitted-box.ts';
import { given } from '../../store/scenario.ts';
import type { Drivers } from './drivers.ts';

type Code = Extract<keyof StoreFaults, `backup-${string}` | `link ${string}`>;

/** A backup of ours with something of it changed. */
async function backup(change: (honest: Awaited<ReturnType<typeof honestBackup>>) => object) {
  return readBackup(JSON.stringify(change(await honestBackup())));
}
const honestBackup = async () => given(await exportAll((await knittedBox()).box));

const packed = (value: unknown): string =>
  `1.${Buffer.from(deflateSync(strToU8(JSON.stringify(value)))).toString('base64url')}`;

/** A file larger than any that is read; none of it is. */
const hugeFile = { size: 600_000_000, slice: () => new Blob(), text: async () => '' } as unknown as Blob;

/** A box in which something lies that no file could bring back. */
async function withoutOne() {
  const { box } = await knittedBox();
  await box.door.write(['settings'], (tx) => tx.objectStore('settings').put({ constructor: 1 }, 'odd'));
  return given(await backupFile(box)).without;
}

/** Why a file is not up to date. */
async function keptFileOf(handle: object) {
  await withKeptFile(await knittedBox(), handle, keepUp);
  return keptFileLate.value;
}

export const backupAndLinkDrivers: Drivers<Code> = {
  'backup-too-large': () => openFile(hugeFile),
  'backup-not-json': () => readBackup('PK\u0003\u0004'),
  'backup-not-ours': () => readBackup('[]'),
  'backup-newer': () => backup((honest) => ({ ...honest, version: BACKUP_VERSION + 1 })),
  'backup-damaged': () => backup(({ plans: _plans, ...honest }) => honest),
  'backup-not-knittable': () =>
    backup((honest) => ({
      ...honest,
      plans: honest.plans.map((plan) => ({
        ...plan,
        plan: {
          ...plan.plan,
          rows: plan.plan.rows.map((row) => (row.n === 3 ? { ...row, after: 21 } : row)),
        },
      })),
    })),
  'backup-without': withoutOne,
  'backup-too-full': async () => backupFile((await knittedBox()).box, 1000),
  'backup-file-refused': () => keptFileOf({ queryPermission: async () => 'denied' }),
  'backup-file-gone': () =>
    keptFileOf({ createWritable: () => Promise.reject(new DOMException('', 'NotFoundError')) }),
  'link damaged': async () => linkToGarment((await garmentToLink(sampleGarment)).slice(0, -40)),
  'link not a garment': () => linkToGarment(packed({ name: 'x', pieces: [], extra: 1 })),
  'link too long': () => linkToGarment(`1.${'A'.repeat(LONGEST_LINK)}`),
  'link version': () => linkToGarment('7.abc'),
};
