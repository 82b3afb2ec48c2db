/** What this process has had of the processor, ms: unlike time, the same on a busy machine. */
export function spent(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** What any test may take, ms, when it is worked for the first time. */
export const LIMIT = 120_000;
