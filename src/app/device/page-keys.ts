/** Keys that a keyboard, a page-turner pedal or a shutter button sends: forward finishes the row, back undoes. */
const forward = new Set([' ', 'Enter', 'ArrowRight', 'PageDown']);
const backward = new Set(['Backspace', 'ArrowLeft', 'PageUp']);

export interface PageTurns {
  readonly forward: () => void;
  readonly back: () => void;
}

/**
 * Listens until the returned function is called. A held key counts once; a focused field, button or sheet keeps its
 * keys. Space and Page Down scroll a page everywhere else: they turn rows only once the pad has had the focus, unless
 * `atOnce` (a pedal is all that she uses).
 */
export function onPageKeys(turns: PageTurns, atOnce: boolean): () => void {
  let turning = atOnce || isPad(document.activeElement);
  const focused = (event: FocusEvent): void => {
    turning ||= isPad(event.target);
  };
  const listen = (event: KeyboardEvent): void => {
    if (!turning) return;
    if (event.defaultPrevented || event.repeat || event.ctrlKey || event.metaKey || event.altKey) return;
    if (keepsKey(event)) return;
    const turn = forward.has(event.key) ? turns.forward : backward.has(event.key) ? turns.back : undefined;
    if (turn === undefined) return;
    event.preventDefault();
    turn();
  };
  document.addEventListener('focusin', focused);
  document.addEventListener('keydown', listen);
  return () => {
    document.removeEventListener('focusin', focused);
    document.removeEventListener('keydown', listen);
  };
}

const isPad = (at: EventTarget | null): boolean => at instanceof Element && at.closest('.pad') !== null;

const FIELD = 'input, select, textarea, [contenteditable]';
const PRESSED_BY_KEY = 'button, a[href], summary, [role="button"], [tabindex="0"]';

/** A field keeps every key; a button keeps the two that press it; an open sheet keeps all. */
function keepsKey(event: KeyboardEvent): boolean {
  const at = event.target;
  if (!(at instanceof Element)) return false;
  if (document.querySelector('dialog[open]') !== null || at.closest(FIELD) !== null) return true;
  return (event.key === ' ' || event.key === 'Enter') && at.closest(PRESSED_BY_KEY) !== null;
}
