import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { keepLocked } from '../../app/device/kept-locked.ts';
import { locked } from '../../app/state.ts';
import { HoldButton } from '../../ui/pad/hold-button.tsx';
import { say } from '../../words/say.ts';

/** Shown as locked by then even where the box does not answer: she puts it away now, ms. */
const SHOWN_AT_LATEST_MS = 1000;

/**
 * Against pockets, cats and children: what lies behind takes neither touch nor key, and the focus comes here and goes
 * back. At once; said, as all that is kept, when it is on disk.
 */
export function Locked() {
  const box = useRef<HTMLDivElement>(null);
  const [isSaid, setSaid] = useState(false);
  useLayoutEffect(() => {
    const main = document.querySelector<HTMLElement>('.knitting .screen-main');
    const latest = setTimeout(() => setSaid(true), SHOWN_AT_LATEST_MS);
    void keepLocked(true).then(() => setSaid(true));
    const open = main && shutOff(main);
    const leave = keepAddress();
    return () => {
      clearTimeout(latest);
      void keepLocked(false);
      open?.();
      leave();
      // the pad stands when this frame is drawn
      requestAnimationFrame(() => document.querySelector<HTMLElement>('.pad')?.focus());
    };
  }, []);
  useLayoutEffect(() => box.current?.querySelector('button')?.focus(), [isSaid]);
  const unlock = () => {
    locked.value = false;
  };
  return (
    <div class="locked" ref={box}>
      {isSaid && (
        <>
          <p>{say('notices.locked')}</p>
          <HoldButton label={say('notices.holdToUnlock')} onHeld={unlock} />
        </>
      )}
    </div>
  );
}

/** A browser that does not say whether there is a way forward has taken it within this, ms. */
const FORWARD_MS = 1000;

/**
 * Back is undone by going forward again (src/app/navigate.ts). From an address that was typed or followed no way leads
 * forward: the locked screen's own takes its place, so that the bar never names another screen than is shown. Opened, the
 * lock leads on to it: a file that the system opened the app with waits there.
 */
function keepAddress(): () => void {
  const own = location.href;
  let asked: string | undefined;
  let later: ReturnType<typeof setTimeout> | undefined;
  const put = () => {
    if (location.href === own) return;
    asked = location.hash;
    history.replaceState(history.state, '', own);
  };
  const arrive = () => {
    const { navigation } = window as { readonly navigation?: { readonly canGoForward: boolean } };
    clearTimeout(later);
    if (navigation?.canGoForward === false) put();
    else if (!navigation) later = setTimeout(put, FORWARD_MS);
  };
  addEventListener('hashchange', arrive);
  return () => {
    clearTimeout(later);
    removeEventListener('hashchange', arrive);
    if (asked !== undefined) location.hash = asked;
  };
}

/** What is in the main part, and what comes into it; not that part itself: it can be scrolled, and a page without one is a riddle to a reader. */
function shutOff(main: HTMLElement): () => void {
  const each = (inert: boolean) => {
    for (const part of main.children) if (part instanceof HTMLElement) part.inert = inert;
  };
  const coming = new MutationObserver(() => each(true));
  each(true);
  coming.observe(main, { childList: true });
  main.tabIndex = 0;
  return () => {
    coming.disconnect();
    each(false);
    main.removeAttribute('tabindex');
  };
}
