import type { Observation } from '../../knit/piece/count/observation.ts';
import { lengthTyped } from '../../words/measures.ts';
import { say } from '../../words/say.ts';

/** What she has told so far; what she does not know is undefined or empty. */
export interface SeenOnNeedle {
  readonly stitches: number | undefined;
  readonly facing: 'RS' | 'WS' | '';
  readonly yarn: 'right' | 'left' | '';
  /** rows up to the landmark from which rows and ridges are counted */
  readonly landmark: number;
  readonly rows: number | undefined;
  readonly ridges: number | undefined;
  readonly shaping: number | undefined;
  /** in her own unit, as typed */
  readonly height: number | undefined;
}

export const nothingSeen: SeenOnNeedle = {
  stitches: undefined,
  facing: '',
  yarn: '',
  landmark: 0,
  rows: undefined,
  ridges: undefined,
  shaping: undefined,
  height: undefined,
};

export interface Told {
  readonly observation: Observation;
  /** the name of the field, for saying which one is doubtful */
  readonly name: string;
}

/** The observations in it, in the order of the fields. */
export function observationsOf(seen: SeenOnNeedle): Told[] {
  const { stitches, facing, yarn, landmark, rows, ridges, shaping, height } = seen;
  const told: Told[] = [];
  const add = (observation: Observation, name: string) => told.push({ observation, name });
  if (stitches !== undefined) add({ kind: 'stitches', stitches }, say('count.seeStitches'));
  if (facing !== '' && yarn !== '') add({ kind: 'side', facing, yarn }, say('count.seeYarn'));
  if (rows !== undefined) add({ kind: 'rows above', landmark, rows }, say('count.seeRows'));
  if (ridges !== undefined) {
    add(
      { kind: 'ridges above', landmark, ridges, ...(facing === '' ? {} : { facing }) },
      say('count.seeRidges'),
    );
  }
  if (shaping !== undefined)
    add({ kind: 'last shaping', edge: 'either', rows: shaping }, say('count.seeShaping'));
  if (height !== undefined) add({ kind: 'height', mm: lengthTyped(height) }, say('count.seeHeight'));
  return told;
}
