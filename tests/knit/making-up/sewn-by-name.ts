import type { Joint, Line, Stretch } from '../../../src/knit/making-up/joint.ts';
import type { PanelEdges, SleeveEdges, Underarm } from '../../../src/knit/making-up/piece-edges.ts';

/** Edges that are known by their names alone: what is sewn to what can be read. */
export const named = (part: string): Line => [{ piece: part, make: 1, part, edge: 'right' }];

const under = (name: string, stitches: number): Underarm | undefined =>
  stitches === 0 ? undefined : { line: named(name), stitches };

const whole = (is: boolean): string => (is ? ' whole' : '');

/** @param underarm stitches bound off there */
export const panel = (name: string, underarm: number): PanelEdges => ({
  hem: () => named(`${name} hem`),
  side: (edge) => named(`${name} ${edge} side`),
  underarm: (edge) => under(`${name} ${edge} underarm`, underarm),
  armhole: (edge, is) => named(`${name} ${edge} armhole${whole(is)}`),
  shoulder: (edge) => named(`${name} ${edge} shoulder`),
  neckSide: (edge, tip) => named(`${name} neck of ${edge}${tip ? ' with tip' : ''}`),
  front: (edge) => named(`${name} opening of ${edge}`),
  middle: () => named(`${name} middle`),
  wholeNeck: () => named(`${name} neck`),
});

export const sleeve = (name: string, underarm: number): SleeveEdges => ({
  cuff: () => named(`${name} cuff`),
  top: () => named(`${name} top`),
  seam: (edge) => named(`${name} ${edge} seam`),
  underarm: (edge) => under(`${name} ${edge} underarm`, underarm),
  cap: (edge, is) => named(`${name} ${edge} cap${whole(is)}`),
});

const stretchSaid = ({ part, edge, make, reversed, rows }: Stretch): string =>
  `${part}${edge === 'right' ? '' : ` ${edge}`}${make === 1 ? '' : ` of ${make}`}${reversed ? ' turned' : ''}${rows ? ` rows ${rows.first} to ${rows.last}` : ''}`;

export const lineSaid = (line: Line): string => line.map(stretchSaid).join(', ');

/** A joint in one line. */
export function jointSaid(joint: Joint): string {
  switch (joint.kind) {
    case 'seam': {
      const how = joint.how === 'mattress' ? '' : ` ${joint.how}`;
      const ease = joint.ease === undefined ? '' : ` ease ${joint.ease}`;
      return `${joint.of}: ${lineSaid(joint.a)} = ${lineSaid(joint.b)}${how}${ease}`;
    }
    case 'pick up':
      return `pick up ${joint.piece} ${joint.make}: ${joint.along.map(({ line, stitches }) => `${stitches} ${lineSaid(line)}`).join(' | ')}`;
    case 'left free':
      return `free ${joint.as}: ${lineSaid(joint.line)}`;
  }
}
