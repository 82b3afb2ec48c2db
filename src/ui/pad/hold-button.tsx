import './hold-button.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Icon, type IconName } from '../icon/icon.tsx';

export interface HoldButtonProps {
  /** says that it wants to be held: 'Hold to unlock' */
  readonly label: string;
  readonly icon?: IconName | undefined;
  /** how long a finger must rest on it, ms */
  readonly holdMs?: number | undefined;
  readonly onHeld: () => void;
}

/**
 * For what a pocket, a cat or a child must not do by a touch. A press from a keyboard or a screen reader is no
 * accident of cloth or paw and counts at once.
 */
export function HoldButton({ label, icon = 'lock', holdMs = 700, onHeld }: HoldButtonProps) {
  const timer = useRef(0);
  const [held, setHeld] = useState(false);
  const letGo = () => {
    clearTimeout(timer.current);
    setHeld(false);
  };
  useEffect(() => () => clearTimeout(timer.current), []);
  const press = (event: PointerEvent) => {
    if (event.button !== 0) return;
    clearTimeout(timer.current);
    setHeld(true);
    timer.current = window.setTimeout(() => {
      setHeld(false);
      passOverLift();
      onHeld();
    }, holdMs);
  };
  return (
    <button
      class={`hold${held ? ' hold-held' : ''}`}
      type="button"
      style={{ '--hold-time': `${holdMs}ms` }}
      onPointerDown={press}
      onPointerUp={letGo}
      onPointerLeave={letGo}
      onPointerCancel={letGo}
      onContextMenu={(event) => event.preventDefault()}
      onClick={(event) => event.detail === 0 && onHeld()}
    >
      <span class="hold-thread" />
      <Icon name={icon} size="l" />
      <span>{label}</span>
    </button>
  );
}

/** What stands under the finger by then hears no click when it is lifted, until the next touch begins. */
function passOverLift(): void {
  const pass = (event: MouseEvent) => {
    if (event.detail === 0) return;
    event.preventDefault();
    event.stopPropagation();
  };
  addEventListener('click', pass, true);
  addEventListener('pointerdown', () => removeEventListener('click', pass, true), {
    capture: true,
    once: true,
  });
}
