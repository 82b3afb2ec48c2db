import { readdirSync, readFileSync } from 'node:fs';

/** Processes by way of /proc: only on Linux, as are the browsers that need it. */

interface Process {
  readonly pid: number;
  readonly parent: number;
  readonly command: string;
}

/** A process and all that came from it, the eldest first. */
export function treeOf(root: number): Process[] {
  const all = processes();
  const tree = all.filter(({ pid }) => pid === root);
  for (const one of tree) tree.push(...all.filter(({ parent }) => parent === one.pid));
  return tree;
}

/** The eldest process whose command line holds the text. */
export function processWith(text: string): number | undefined {
  const found = processes().filter(({ command, pid }) => command.includes(text) && pid !== process.pid);
  const pids = new Set(found.map(({ pid }) => pid));
  return found.find(({ parent }) => !pids.has(parent))?.pid;
}

/** Ends a process and all that came from it without a chance to tidy up. */
export function killTree(root: number): void {
  for (const { pid } of treeOf(root)) killNow(pid);
}

export function killNow(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // It went with its parent.
  }
}

function processes(): Process[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .flatMap((name) => {
      try {
        const command = readFileSync(`/proc/${name}/cmdline`, 'utf8').replaceAll('\0', ' ');
        // the name in brackets may hold anything, also brackets: what follows the last one counts
        const [, parent] = readFileSync(`/proc/${name}/stat`, 'utf8')
          .replace(/^.*\) /s, '')
          .split(' ');
        return [{ pid: Number(name), parent: Number(parent), command }];
      } catch {
        return [];
      }
    });
}
