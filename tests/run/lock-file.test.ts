import { describe, expect, it } from 'vitest';
import { faultsOf, type LockFile } from './lock-file.ts';

const sound = { version: '1.0.0', license: 'MIT', integrity: 'sha512-x' };
const lockWith = (locked: object): LockFile => ({
  lockfileVersion: 3,
  packages: { '': { dependencies: { wool: '^1.0.0' } }, 'node_modules/wool': { ...sound, ...locked } },
});
const own = { dependencies: { wool: '^1.0.0' } };

describe('the check of the lock file', () => {
  it('finds nothing wrong with a package that has a checksum and an open licence', () => {
    expect(faultsOf(lockWith({}), own)).toEqual([]);
    expect(faultsOf(lockWith({ license: '(MIT OR GPL-3.0)' }), own)).toEqual([]);
  });

  it('refuses a licence that would bind the app, but lets a tool have conditions on its own files', () => {
    expect(faultsOf(lockWith({ license: 'GPL-3.0' }), own)).toHaveLength(1);
    expect(faultsOf(lockWith({ license: 'MIT AND GPL-3.0' }), own)).toHaveLength(1);
    expect(faultsOf(lockWith({ license: undefined }), own)).toHaveLength(1);
    expect(faultsOf(lockWith({ license: 'MPL-2.0' }), own)).toHaveLength(1);
    expect(faultsOf(lockWith({ license: 'MPL-2.0', dev: true }), own)).toEqual([]);
  });

  it('refuses a package without a checksum and one that names its place', () => {
    expect(faultsOf(lockWith({ integrity: undefined }), own)).toEqual(['wool has no sha512 checksum.']);
    expect(faultsOf(lockWith({ resolved: 'https://example.org/wool.tgz' }), own)).toHaveLength(1);
  });

  it('notices that package.json asks for something else', () => {
    expect(faultsOf(lockWith({}), { dependencies: { wool: '^2.0.0' } })).toEqual([
      'wool: package.json asks for ^2.0.0, the lock file for ^1.0.0.',
    ]);
  });
});
