import type { MakingUpStep } from '../making-up/step.ts';

/** What a measure of a piece is called, as far as one name fits every piece; a section goes by its own. */
export type MeasureName =
  | 'at its beginning'
  | 'at its widest'
  | 'in all'
  | 'neck'
  | 'shoulder'
  | 'neck depth'
  | 'top';

/** Steps of the making up that have edges to be marked. */
export type SeamKind = Exclude<MakingUpStep['kind'], 'block' | 'ends' | 'neck edge' | 'buttons'>;

/** What stands beside the drawings of a written pattern. */
export interface PictureWords {
  readonly schematics: string;
  /** what a seam takes is still in the widths */
  readonly asKnitted: string;
  readonly assembly: string;
  readonly measures: Readonly<Record<MeasureName, string>>;
  /** the height of a section, of the last of a panel to its top */
  readonly section: (name: string, toTop: boolean) => string;
  readonly seams: Readonly<Record<SeamKind, string>>;
}

export const englishPictures: PictureWords = {
  schematics: 'SCHEMATICS',
  asKnitted: 'Measured as knitted: a seam takes one stitch of each edge.',
  assembly: 'ASSEMBLY',
  measures: {
    'at its beginning': 'Width where it begins',
    'at its widest': 'Width at the widest',
    'in all': 'Height in all',
    neck: 'Width of the neck',
    shoulder: 'Width of a shoulder',
    'neck depth': 'Depth of the neck',
    top: 'Width at the top',
  },
  section: (name, toTop) => `Height of the ${name}${toTop ? ', to the top' : ''}`,
  seams: {
    shoulders: 'Shoulders',
    'pick up': 'Picked up for a band',
    close: 'Closed at the band',
    raglan: 'Raglan seams',
    'set in sleeves': 'Sleeves set in',
    'side seams': 'Side seams',
    'sleeve seams': 'Sleeve seams',
    opening: 'Opening',
    lap: 'Laid over each other',
    join: 'Joined',
  },
};
