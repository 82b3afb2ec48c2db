export interface PackageFile {
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

interface LockedPackage extends PackageFile {
  readonly version?: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly dev?: boolean;
  readonly optional?: boolean;
}

export interface LockFile {
  readonly lockfileVersion: number;
  /** by path; '' is the project itself */
  readonly packages: Readonly<Record<string, LockedPackage>>;
}

/** Licences of what is shipped with the app: short notices, no conditions on the app itself. */
const shipped = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'Apache-2.0', 'BlueOak-1.0.0'];

/** Tools stay on the developer's machine, so a licence with conditions on the tool's own files will do. */
const tools = [...shipped, 'MPL-2.0', 'CC-BY-4.0', 'CC0-1.0', 'Python-2.0', 'Unlicense'];

/** What is wrong with a lock file, a sentence each; empty when nothing is. */
export function faultsOf(lock: LockFile, own: PackageFile): string[] {
  const packages = Object.entries(lock.packages).filter(([path]) => path !== '');
  return [
    ...(lock.lockfileVersion === 3 ? [] : [`The lock file has version ${lock.lockfileVersion}, not 3.`]),
    ...packages.flatMap(([path, locked]) => packageFaults(path.replace(/^.*node_modules\//, ''), locked)),
    ...rangeFaults(lock.packages[''] ?? {}, own),
  ];
}

function packageFaults(name: string, { license, integrity, resolved, dev }: LockedPackage): string[] {
  const allowed = dev ? tools : shipped;
  return [
    ...(license !== undefined && allows(allowed, license)
      ? []
      : [`${name} has the licence ${license ?? 'unknown'}, which is not among ${allowed.join(', ')}.`]),
    ...(integrity?.startsWith('sha512-') ? [] : [`${name} has no sha512 checksum.`]),
    ...(resolved === undefined ? [] : [`${name} names the place it was fetched from; see .npmrc.`]),
  ];
}

/** 'MIT OR Apache-2.0' needs one of them, 'MIT AND ISC' both. */
function allows(allowed: readonly string[], license: string): boolean {
  const bare = license.replace(/[()]/g, '');
  return bare.split(' OR ').some((choice) => choice.split(' AND ').every((one) => allowed.includes(one)));
}

function rangeFaults(locked: PackageFile, own: PackageFile): string[] {
  return (['dependencies', 'devDependencies'] as const).flatMap((kind) => {
    const ours = own[kind] ?? {};
    const theirs = locked[kind] ?? {};
    return Object.keys({ ...ours, ...theirs })
      .filter((name) => ours[name] !== theirs[name])
      .map(
        (name) =>
          `${name}: package.json asks for ${ours[name] ?? 'none'}, the lock file for ${theirs[name] ?? 'none'}.`,
      );
  });
}
