import type { FabricName } from '../../../src/knit/fabric.ts';
import type { PlannedPart, PlannedRow, PlannedSection } from '../../../src/knit/piece/planned.ts';
import { parseRow } from '../../../src/knit/row/read/parse.ts';
import type { Side } from '../../../src/knit/row/step.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { rowLines } from '../../../src/knit/written/row-lines.ts';
import { given } from '../../store/scenario.ts';

export interface Rows {
  readonly name?: string;
  readonly fabric?: FabricName;
  readonly needle?: number;
  /** 'k1, ssk, k to end > 9': the row in words, and how many it leaves where that is another number; ' x 4' for as many alike */
  readonly rows: readonly string[];
}

/** A part worked to and fro, its rows spelled out by hand. */
export function partOf(start: number, sections: readonly Rows[], first: Side = 'RS'): PlannedPart {
  const rows: PlannedRow[] = [];
  const named: PlannedSection[] = [];
  let before = start;
  for (const [
    section,
    { name = 'body', fabric = 'stocking', needle = 4, rows: said },
  ] of sections.entries()) {
    const all = said.flatMap((one) => {
      const [, words = '', times = '1'] = /^(.*?)(?: x (\d+))?$/.exec(one) ?? [];
      return Array.from({ length: Number(times) }, () => words);
    });
    named.push({ name, fabric, needle, first: rows.length + 1, last: rows.length + all.length });
    for (const one of all) {
      const [words = '', left] = one.split(' > ');
      const [, by = ''] = /^by (.*)$/.exec(left ?? '') ?? [];
      const after = by === '' ? Number(left ?? before) : before + Number(by);
      const isFirst = rows.length % 2 === 0;
      const row = {
        n: rows.length + 1,
        side: isFirst === (first === 'RS') ? ('RS' as const) : ('WS' as const),
        section,
        needle,
        steps: given(parseRow(words)),
        before,
        after,
        shaping: [],
        height: 0,
      };
      rows.push(row);
      before = after;
    }
  }
  return {
    piece: 'Scarf',
    name: 'scarf',
    from: { castOn: start },
    end: 'bind off',
    setUp: [],
    sections: named,
    rows,
    start,
    left: before,
    base: 0,
    offset: 0,
    cells: named.map(() => ({ width: 5, height: 4 })),
  };
}

const { rows: rowWords, work, point, name, facts } = englishWritten('US');

/** The lines of a part, 4 mm needles having been named before it. */
export const linesOf = (part: PlannedPart, isLoose?: boolean): readonly string[] =>
  rowLines(part, { rows: rowWords, work, point, name, facts, ...(isLoose && { isLoose }) }, 4);

/** Of one section only, without what it is called. */
export const said = (start: number, rows: readonly string[], first?: Side): readonly string[] =>
  linesOf(partOf(start, [{ rows }], first)).slice(1);
