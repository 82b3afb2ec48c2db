/** A run of letters where it stands on a page; lengths are points from the page's left and bottom edge. */
export interface Bit {
  readonly text: string;
  readonly x: number;
  /** of the line that the letters stand on */
  readonly y: number;
  readonly width: number;
  /** of the letters */
  readonly size: number;
}

export interface PageOfBits {
  readonly bits: readonly Bit[];
  readonly height: number;
}

/** Bits that stand on one line, from left to right. */
export interface Row {
  readonly y: number;
  readonly bits: readonly Bit[];
}

/** As far may a fraction or a raised letter stand above the line that it belongs to, in sizes of a letter. */
const RAISED = 0.4;

export const endOf = ({ x, width }: Bit): number => x + width;

/** The rows of a page, or of a part of it, from the top. */
export function rowsOf(bits: readonly Bit[]): Row[] {
  const rows: { y: number; size: number; bits: Bit[] }[] = [];
  for (const bit of [...bits].sort((a, b) => b.y - a.y)) {
    const row = rows.at(-1);
    if (row && row.y - bit.y <= RAISED * Math.max(row.size, bit.size)) {
      row.bits.push(bit);
      // what is small is raised above the line, not the line
      if (bit.size >= row.size) Object.assign(row, { y: bit.y, size: bit.size });
    } else rows.push({ y: bit.y, size: bit.size, bits: [bit] });
  }
  return rows.map(({ y, bits: found }) => ({ y, bits: found.sort((a, b) => a.x - b.x) }));
}

/** A gap as wide as this parts two words, in sizes of a letter. */
const WORD_GAP = 0.14;

/** The letters of a row, with a space where a gap parts two words. */
export function textOfRow({ bits }: Row): string {
  let text = '';
  bits.forEach((bit, at) => {
    const before = bits[at - 1];
    const apart = before !== undefined && bit.x - endOf(before) > WORD_GAP * Math.min(bit.size, before.size);
    text += apart ? ` ${bit.text}` : bit.text;
  });
  return text.replace(/\s+/g, ' ').trim();
}
