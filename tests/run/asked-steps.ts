/** The steps named behind a command, or all of them. Throws a sentence where there is no such step. */
export function askedSteps<Name extends string>(steps: Readonly<Record<Name, unknown>>): readonly Name[] {
  const all = Object.keys(steps) as Name[];
  const asked = process.argv.slice(2) as Name[];
  const unknown = asked.filter((name) => !all.includes(name));
  if (unknown.length > 0)
    throw new Error(`There is no step ${unknown.join(', ')}. There are: ${all.join(', ')}.`);
  return asked.length > 0 ? asked : all;
}
