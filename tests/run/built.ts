import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** What the built app is made from. */
const sources = ['src', 'public', 'index.html', 'vite.config.ts', 'package.json', 'package-lock.json'];

/** The built app: dist, or another folder where $RIDGELINE_OUT says so (two builds at once do not disturb). */
export const dist = process.env.RIDGELINE_OUT ?? 'dist';

/** Builds where a source is newer than what stands there. Throws a sentence where it fails. */
export function buildIfNeeded(outDir = dist, version?: string): void {
  const builtAt = changedAt(join(outDir, 'sw.js'));
  if (builtAt < Math.max(...sources.map(newestIn))) build({ outDir, ...(version && { version }) });
}

export interface BuildOptions {
  readonly outDir: string;
  readonly version?: string;
  /** another folder with the sources */
  readonly cwd?: string;
}

/** Builds the app as `npm run build` does, under another version or into another folder where asked. */
export function build({ outDir, version, cwd = '.' }: BuildOptions): void {
  const env = { ...process.env, RIDGELINE_OUT: outDir, ...(version && { RIDGELINE_VERSION: version }) };
  const vite = join('node_modules', 'vite', 'bin', 'vite.js');
  const { status, stdout, stderr } = spawnSync(process.execPath, [vite, 'build', '--logLevel', 'warn'], {
    cwd,
    env: { ...env, NODE_ENV: 'production' },
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`The app could not be built.\n${stdout}${stderr}`);
}

function newestIn(path: string): number {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (!stat?.isDirectory()) return stat?.mtimeMs ?? 0;
  const inside = readdirSync(path, { recursive: true, encoding: 'utf8' });
  return Math.max(stat.mtimeMs, ...inside.map((name) => changedAt(join(path, name))));
}

const changedAt = (path: string): number => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
