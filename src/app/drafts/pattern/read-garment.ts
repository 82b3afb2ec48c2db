import type { ReadOptions } from '../../../knit/pattern/read-pattern.ts';
import type { GarmentRecord } from '../../../store/records.ts';
import { readKept } from '../kept/read-kept.ts';

/** One text of a record is shorter than many a pattern: the whole is kept in lengths, to be joined in order. */
const LENGTH = 15_000;
const NAME = 'pattern';

export const textsOf = (text: string): Record<string, string> =>
  Object.fromEntries(
    Array.from({ length: Math.ceil(text.length / LENGTH) }, (_, i) => [
      `${NAME}${i + 1}`,
      text.slice(i * LENGTH, (i + 1) * LENGTH),
    ]),
  );

/** The whole text that a garment was read from; undefined when it was not. */
export function wholeText({ texts }: Pick<GarmentRecord, 'texts'>): string | undefined {
  if (texts === undefined) return undefined;
  const lengths: string[] = [];
  for (let next = texts[`${NAME}1`]; next !== undefined; next = texts[`${NAME}${lengths.length + 1}`]) {
    lengths.push(next);
  }
  return lengths.length === 0 ? undefined : lengths.join('');
}

/** How a garment's text was read; undefined when it was not read from one. */
export async function readOptionsOf({
  design,
}: Pick<GarmentRecord, 'design'>): Promise<ReadOptions | undefined> {
  const known = await readKept('readDesign', design);
  return known.ok ? known.value?.options : undefined;
}
