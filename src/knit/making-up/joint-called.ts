import type { HandSeam, Joint, Line } from './joint.ts';

/** What pieces, their parts and sections are called from now on. */
export interface Called {
  readonly piece: (name: string) => string;
  readonly part: (name: string) => string;
  readonly section: (name: string) => string;
}

/** The same joint after its pieces, parts or sections were called otherwise. */
export function jointCalled(joint: Joint, called: Called): Joint {
  const line = (old: Line): Line =>
    old.map((stretch) => ({
      ...stretch,
      piece: called.piece(stretch.piece),
      part: called.part(stretch.part),
      ...(stretch.sections && { sections: stretch.sections.map(called.section) }),
    }));
  switch (joint.kind) {
    case 'seam':
      return { ...joint, a: line(joint.a), b: line(joint.b) };
    case 'pick up': {
      const along = joint.along.map((one) => ({ ...one, line: line(one.line) }));
      return { ...joint, piece: called.piece(joint.piece), along };
    }
    case 'left free':
      return { ...joint, line: line(joint.line) };
  }
}

/** What she joined herself, after its pieces were called otherwise. */
export function handSeamCalled(seam: HandSeam, piece: (name: string) => string): HandSeam {
  const line = (old: Line): Line => old.map((stretch) => ({ ...stretch, piece: piece(stretch.piece) }));
  return { ...seam, a: line(seam.a), b: line(seam.b) };
}

/** Whether what she joined herself goes along whole edges, and so holds in any gauge. */
export const holdsInAnyGauge = ({ a, b }: HandSeam): boolean =>
  [...a, ...b].every(({ stitches, rows }) => stitches === undefined && rows === undefined);
