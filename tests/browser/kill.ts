import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';

/** Ends every process that was started with this profile, without a chance to tidy up. */
export function killBrowserOf(profile: string): void {
  const pids = processes().filter(({ command }) => command.includes(`--user-data-dir=${profile}`));
  if (pids.length === 0) throw new Error(`No browser runs with ${profile}.`);
  for (const { pid } of pids) killProcess(pid);
}

function killProcess(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // It went with its parent.
  }
}

function processes(): readonly { pid: number; command: string }[] {
  if (existsSync('/proc/self/cmdline')) {
    const pids = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
    return pids.map((pid) => ({ pid: Number(pid), command: commandOf(pid) }));
  }
  const { stdout } = spawnSync('ps', ['-axo', 'pid=,command='], { encoding: 'utf8' });
  return [...stdout.matchAll(/^\s*(\d+)\s+(.*)$/gm)].map(([, pid, command]) => ({
    pid: Number(pid),
    command: command ?? '',
  }));
}

function commandOf(pid: string): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ');
  } catch {
    return '';
  }
}
