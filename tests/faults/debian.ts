import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Programs that the steps in other engines need, with Debian's packages for them. */
const programs = {
  firefox: { path: '/usr/bin/firefox-esr', packages: ['firefox-esr'] },
  webkit: {
    path: '/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser',
    packages: ['webkit2gtk-driver'],
  },
  screen: { path: '/usr/bin/Xvfb', packages: ['xvfb'] },
  nginx: { path: '/usr/sbin/nginx', packages: ['nginx-light'] },
  caddy: { path: '/usr/bin/caddy', packages: ['caddy'] },
  strace: { path: '/usr/bin/strace', packages: ['strace'] },
} as const;

export type Program = keyof typeof programs;

export const pathOf = (program: Program): string => programs[program].path;

let asked = false;

/** Whether the programs are here; as root on Debian what is missing is installed first. Else the sentence why not. */
export function missing(...wanted: Program[]): string | undefined {
  const absent = () => wanted.filter((program) => !existsSync(pathOf(program)));
  if (absent().length > 0 && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) install();
  const still = absent();
  if (still.length === 0) return undefined;
  return `${still.map(pathOf).join(' and ')} not here; as root on Debian this installs it by itself`;
}

function install(): void {
  if (asked) return;
  asked = true;
  const absent = Object.values(programs).filter(({ path }) => !existsSync(path));
  const packages = absent.flatMap((program) => program.packages);
  console.log(`Installing ${packages.join(', ')}.`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...args: string[]) =>
    spawnSync('apt-get', args, { stdio: ['ignore', 'inherit', 'inherit'], env });
  apt('update', '-qq');
  apt('install', '-y', '-qq', '--no-install-recommends', ...packages);
}
