import type { SewnBand } from './band-joints.ts';
import type { Joint } from './joint.ts';
import { atFront, type Worn } from './piece-edges.ts';

/** A raglan's line: the side of the body, as worn, and the panel that it joins the sleeve to. */
export type RaglanLine = `${Worn} ${'front' | 'back'}`;

/** A shoulder by its side, or a raglan's line. */
export interface NeckSeam {
  readonly worn: Worn;
  readonly panel: 'front' | 'back';
}

/** Where no band says otherwise it is begun at the left shoulder, a raglan's at the left line behind. */
const USUAL: NeckSeam = { worn: 'left', panel: 'back' };

/**
 * The seam that waits until a neckband worked in rows is done: the one at which its ends meet, since there it is begun.
 * undefined where they meet in the middle of a piece: then all seams are sewn before it. Common practice, no published source.
 */
export function waitingSeam({ along }: Pick<SewnBand, 'along'>): NeckSeam | undefined {
  const edges = along.map(({ edge }) => edge);
  switch (edges[0]) {
    case 'left front neck':
    case 'front neck':
      // the sleeve lies on the other side of the line
      return edges.includes('left sleeve top') ? { worn: 'left', panel: 'front' } : USUAL;
    case 'right sleeve top':
      return { worn: 'right', panel: 'front' };
    case 'back neck':
    case 'right back neck':
      return { worn: 'right', panel: 'back' };
    case 'middle of the front neck':
    case 'right front neck':
    case 'middle of the back neck':
    case 'left back neck':
      return undefined;
    default:
      return USUAL;
  }
}

/** The left one behind comes last: it is where a band usually begins. */
export const RAGLAN_LINES: readonly NeckSeam[] = [
  { worn: 'left', panel: 'front' },
  { worn: 'right', panel: 'front' },
  { worn: 'right', panel: 'back' },
  USUAL,
];

/** Which it is, by the edge of the panel that it lies along: the second of the seam's lines, a shoulder's always the back's. */
export function neckSeamOf({ b: [first] }: Extract<Joint, { kind: 'seam' }>, back: string): NeckSeam {
  // a top goes from the arm to the neck: of the shoulder at the left edge it is turned round
  const isLeft = first?.edge === 'left' || (first?.edge === 'top' && first.reversed === true);
  const outer = isLeft ? 'left' : 'right';
  return first?.piece === back ? { worn: outer, panel: 'back' } : { worn: atFront[outer], panel: 'front' };
}

export const lineNamed = ({ worn, panel }: NeckSeam): RaglanLine => `${worn} ${panel}`;

/** Of the sleeves whose lines are sewn, the one that is not. */
export function lineLeft(sewn: readonly NeckSeam[]): RaglanLine | undefined {
  const names = new Set(sewn.map(lineNamed));
  const left = RAGLAN_LINES.find(
    (line) => sewn.some(({ worn }) => worn === line.worn) && !names.has(lineNamed(line)),
  );
  return left && lineNamed(left);
}
