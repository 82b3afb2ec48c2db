/**
 * Every package in the lock file has a checksum and a licence that lets this app be passed on, none names the
 * place it was fetched from (so that any registry serves), and the lock file agrees with package.json.
 */
import { readFileSync } from 'node:fs';
import { faultsOf, type LockFile, type PackageFile } from './lock-file.ts';

const readJson = <T>(path: string): T => JSON.parse(readFileSync(path, 'utf8')) as T;

const lock = readJson<LockFile>('package-lock.json');
const faults = faultsOf(lock, readJson<PackageFile>('package.json'));
const count = Object.keys(lock.packages).length - 1;
console.log(
  faults.length === 0 ? `${count} packages: licences and checksums are in order.` : faults.join('\n'),
);
if (faults.length > 0) process.exitCode = 1;
