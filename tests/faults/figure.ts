/** One line of the table: what was tried, what came of it, what must come of it. */
export interface Figure {
  readonly name: string;
  readonly measured: string;
  readonly bar: string;
  readonly met: boolean;
}

/** A step that this machine cannot make; it is said, and is no miss. */
export interface CannotRun {
  readonly name: string;
  readonly why: string;
}

export const cannotRun = (step: Figure | CannotRun): step is CannotRun => 'why' in step;

/** A line for each step, columns under one another. */
export function printFigures(steps: readonly (Figure | CannotRun)[]): string {
  const width = Math.max(...steps.map(({ name }) => name.length));
  return steps
    .map((step) => {
      const name = step.name.padEnd(width);
      if (cannotRun(step)) return `not run  ${name}  ${step.why}`;
      return `${step.met ? 'met    ' : 'MISSED '}  ${name}  ${step.measured} (${step.bar})`;
    })
    .join('\n');
}
