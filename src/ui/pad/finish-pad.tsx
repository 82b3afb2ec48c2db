import './finish-pad.css';
import type { ComponentChildren } from 'preact';
import { Icon } from '../icon/icon.tsx';
import { useFinger } from './finger.ts';

/** How the pad tells a shaping row: by notches cut where the drawing has them, by hatching, by a sign, then by colour. */
export interface PadShaping {
  /** as the work lies in her lap */
  readonly notch: 'left' | 'right' | 'both' | 'across';
  readonly turn: 'decrease' | 'increase' | 'both' | 'bindOff';
}

export interface FinishPadProps {
  /** shown large, and the accessible name; the same on every row, or a screen reader reads it again at each tap */
  readonly label: string;
  readonly shaping?: PadShaping | undefined;
  /** the hand whose thumb taps: the pad lies under it, what is `beside` lies away from it */
  readonly hand: 'right' | 'left';
  /** the undo button, and no more than one other */
  readonly beside: ComponentChildren;
  /** a row is still being written down: the tap was taken */
  readonly pressed?: boolean | undefined;
  /** ids of the row's words and its count */
  readonly describedBy?: string | undefined;
  readonly onFinish: () => void;
}

/** Its name stays the same on every row; what a row asks for is in the text that describes it. */
export function FinishPad(props: FinishPadProps) {
  const { label, shaping, hand, beside, pressed, describedBy, onFinish } = props;
  const finger = useFinger(onFinish);
  return (
    <div class={`pad-row pad-${hand}`}>
      <div class="pad-beside">{beside}</div>
      <button
        class={`pad${shaping ? ` pad-shaping pad-notch-${shaping.notch}` : ''}${pressed ? ' pad-pressed' : ''}`}
        type="button"
        aria-label={label}
        aria-describedby={describedBy}
        onClick={onFinish}
        {...finger}
      >
        <span class="pad-cloth" />
        <span class="pad-words">
          <span class="pad-label">
            {shaping ? <Signs turn={shaping.turn} /> : <Icon name="check" />}
            {label}
          </span>
        </span>
      </button>
    </div>
  );
}

const Signs = ({ turn }: Pick<PadShaping, 'turn'>) =>
  turn === 'bindOff' ? (
    <Icon name="bindOff" />
  ) : (
    <>
      {turn !== 'increase' && <Icon name="decrease" />}
      {turn !== 'decrease' && <Icon name="increase" />}
    </>
  );
