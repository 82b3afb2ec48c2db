/** `npm run check`: types, lint, unused code, licences and the lock file. */
import { checks, printStep, runStep } from './steps.ts';

const results = checks.map(runStep);
console.log(`\n${results.map(printStep).join('\n')}`);
if (results.some(({ passed }) => !passed)) process.exitCode = 1;
