import { useLayoutEffect, useRef } from 'preact/hooks';
import { keepLocked, lockAsLeft } from '../../app/device/kept-locked.ts';
import { locked } from '../../app/state.ts';
import { HoldButton } from '../../ui/pad/hold-button.tsx';
import { say } from '../../words/say.ts';

// with the rest of the screen
lockAsLeft();

/** Against pockets, cats and children: what lies behind takes neither touch nor key, and the focus comes here and goes back. */
export function Locked() {
  const box = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const main = document.querySelector<HTMLElement>('.knitting .screen-main');
    keepLocked(true);
    if (main) main.inert = true;
    box.current?.querySelector('button')?.focus();
    return () => {
      keepLocked(false);
      if (main) main.inert = false;
      // the pad stands when this frame is drawn
      requestAnimationFrame(() => document.querySelector<HTMLElement>('.pad')?.focus());
    };
  }, []);
  const unlock = () => {
    locked.value = false;
  };
  // the only thing on the page that is not shut off
  return (
    <main class="locked" ref={box}>
      <p>{say('notices.locked')}</p>
      <HoldButton label={say('notices.holdToUnlock')} onHeld={unlock} />
    </main>
  );
}
