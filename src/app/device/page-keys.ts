/** Keys that a keyboard, a page-turner pedal or a shutter button sends: forward finishes the row, back undoes. */
const forward = new Set([' ', 'Enter', 'ArrowRight', 'PageDown']);
const backward = new Set(['Backspace', 'ArrowLeft', 'PageUp']);

export interface PageTurns {
  readonly forward: () => void;
  readonly back: () => void;
}

/**
 * Listens until the returned function is called. A held key counts once; a focused field, button or sheet keeps its
 * keys. Space and Page Down scroll a page everywhere else, and this one too: they turn rows only once the pad has had the
 * focus, unless `atOnce` (a pedal is all that she uses).
 */
export function onPageKeys(turns: PageTurns, atOnce: boolean): () => void {
  let turning = atOnce || isPad(document.activeElement);
  const focused = (event: FocusEvent): void => {
    if (!isPad(event.target)) return;
    turning = true;
    showRow(event.target);
  };
  const listen = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    if (keepsKey(event)) return;
    const turn = forward.has(event.key) ? turns.forward : backward.has(event.key) ? turns.back : undefined;
    if (!turning || turn === undefined) scroll(event);
    else if (!event.repeat) {
      event.preventDefault();
      turn();
    }
  };
  document.addEventListener('focusin', focused);
  document.addEventListener('keydown', listen);
  return () => {
    document.removeEventListener('focusin', focused);
    document.removeEventListener('keydown', listen);
  };
}

const isPad = (at: EventTarget | null): at is Element => at instanceof Element && at.closest('.pad') !== null;

/** What scrolls by itself between a head and a foot that stay; undefined where the whole page scrolls. */
function scroller(): Element | undefined {
  const main = document.querySelector('.screen-main');
  return main && main.scrollHeight > main.clientHeight + 1 ? main : undefined;
}

/** On the way to the pad Tab has led to what lies below: the row that it finishes is brought into sight again. */
function showRow(pad: Element): void {
  const main = scroller();
  if (main && pad.matches(':focus-visible')) main.scrollTop = 0;
}

/** By how much of what is in sight a key scrolls, as browsers have it. */
const scrolledBy: Readonly<Record<string, number>> = {
  ' ': 0.875,
  PageDown: 0.875,
  PageUp: -0.875,
  ArrowDown: 0.1,
  ArrowUp: -0.1,
};

/** A browser scrolls the middle of a page by keys only where something in it has the focus: here, where nothing has. */
function scroll(event: KeyboardEvent): void {
  const main = scroller();
  const by = scrolledBy[event.key];
  if (by === undefined || main === undefined || main.contains(event.target as Node)) return;
  event.preventDefault();
  main.scrollBy({ top: (event.shiftKey ? -by : by) * main.clientHeight });
}

const FIELD = 'input, select, textarea, [contenteditable]';
const PRESSED_BY_KEY = 'button, a[href], summary, [role="button"], [tabindex="0"]';

/** A field keeps every key; a button keeps the two that press it; an open sheet keeps all. */
function keepsKey(event: KeyboardEvent): boolean {
  const at = event.target;
  if (!(at instanceof Element)) return false;
  if (document.querySelector('dialog[open]') !== null || at.closest(FIELD) !== null) return true;
  return (event.key === ' ' || event.key === 'Enter') && at.closest(PRESSED_BY_KEY) !== null;
}
