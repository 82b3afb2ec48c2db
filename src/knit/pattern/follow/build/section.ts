import type { FabricName } from '../../../fabric.ts';
import type { Side } from '../../../row/step.ts';
import type { From } from '../../say/how-far.ts';
import type { FabricState } from './fabric-state.ts';

/** A section that a text announced: it opens with the next row. */
export interface ToldSection {
  readonly name: string;
  readonly fabric: FabricState;
  /** the fabric before it, until the text names one within it */
  was: FabricState | undefined;
  begun: boolean;
}

export interface SectionBuild {
  name: string;
  readonly fabric: FabricName;
  readonly needle: number;
  /** rows of the part before it */
  readonly first: number;
  stretch?: Stretch;
  readonly told?: ToldSection | undefined;
}

/** A stretch that ends by a measure. */
export interface Stretch {
  readonly id: string;
  readonly mm?: number;
  readonly from: From;
  readonly endSide?: Side;
  /** no gauge or no measure: she counts until it is long enough */
  readonly open: boolean;
}
