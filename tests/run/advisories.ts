/**
 * Whether a package that is in the app is known to be at fault, where the registry answers; it says so where not. What
 * only builds and tests is not asked for: nobody who knits runs it.
 */
import { spawnSync } from 'node:child_process';

const { status, stdout } = spawnSync('npm', ['audit', '--omit=dev', '--json', '--audit-level=moderate'], {
  encoding: 'utf8',
  timeout: 30_000,
});
const answer = readAnswer(stdout);
if (answer === undefined) console.log('The registry does not answer about advisories: not looked up.');
else if (status === 0) console.log('No advisory for a package in the app.');
else {
  console.log(`Advisories for packages in the app: ${Object.keys(answer).join(', ')}. See npm audit.`);
  process.exitCode = 1;
}

/** Advisories by package; undefined where nobody answered. */
function readAnswer(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const { vulnerabilities } = JSON.parse(text) as { vulnerabilities?: Readonly<Record<string, unknown>> };
    return vulnerabilities;
  } catch {
    return undefined;
  }
}
