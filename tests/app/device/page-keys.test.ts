import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { onPageKeys } from '../../../src/app/device/page-keys.ts';

/** A part of a page that knows only what it is and what it lies in, as selectors. */
class Part extends EventTarget {
  constructor(readonly is: readonly string[]) {
    super();
  }
  closest(selectors: string): Part | null {
    return selectors.split(',').some((one) => this.is.includes(one.trim())) ? this : null;
  }
}

const pad = () => new Part(['.pad', 'button']);
const text = () => new Part(['p']);

/** A page with something in focus, and a sheet that is open or not. */
class Page extends EventTarget {
  activeElement: Part | null = null;
  sheetOpen = false;
  querySelector = (selector: string) => (this.sheetOpen && selector === 'dialog[open]' ? new Part([]) : null);

  focus(at: Part): void {
    this.activeElement = at;
    this.dispatchEvent(Object.defineProperty(new Event('focusin'), 'target', { value: at }));
  }
  press(key: string, at: unknown = text(), more: object = {}): Event {
    const event = Object.assign(new Event('keydown', { cancelable: true }), { key, ...more });
    Object.defineProperty(event, 'target', { value: at });
    this.dispatchEvent(event);
    return event;
  }
}

describe('keys, pedals and shutter buttons', () => {
  let page: Page;
  let done: string[];
  let stop: () => void;
  const listen = (atOnce: boolean) => {
    stop = onPageKeys({ forward: () => done.push('row'), back: () => done.push('undo') }, atOnce);
  };

  beforeEach(() => {
    page = new Page();
    done = [];
    vi.stubGlobal('document', page);
    vi.stubGlobal('Element', Part);
  });
  afterEach(() => {
    stop();
    vi.unstubAllGlobals();
  });

  it('finish a row with every key that goes on, and undo with every one that goes back; others do nothing', () => {
    listen(true);
    for (const key of [' ', 'Enter', 'ArrowRight', 'PageDown']) page.press(key);
    expect(done).toEqual(['row', 'row', 'row', 'row']);
    for (const key of ['Backspace', 'ArrowLeft', 'PageUp']) page.press(key);
    expect(done.slice(4)).toEqual(['undo', 'undo', 'undo']);
    for (const key of ['a', 'Tab', 'Escape', 'ArrowUp', 'ArrowDown', 'Home']) page.press(key);
    expect(done).toHaveLength(7);
  });

  it('that turned a row do not scroll the page as well, and those that did nothing are left to it', () => {
    listen(true);
    expect(page.press('PageDown').defaultPrevented).toBe(true);
    expect(page.press('ArrowDown').defaultPrevented).toBe(false);
  });

  it('that scroll the page turn rows only once the pad has had the focus, unless a pedal is all she uses', () => {
    listen(false);
    page.press('PageDown');
    page.focus(text());
    page.press('PageDown');
    expect(done).toEqual([]);
    page.focus(pad());
    page.focus(text());
    page.press('PageDown');
    expect(done).toEqual(['row']);
  });

  it('turn rows at once where the pad has the focus already', () => {
    page.activeElement = pad();
    listen(false);
    page.press('PageDown');
    expect(done).toEqual(['row']);
  });

  it('held down count once, and with control, command or alt they are the browser’s', () => {
    listen(true);
    for (const more of [{ repeat: true }, { ctrlKey: true }, { metaKey: true }, { altKey: true }])
      expect(page.press('Enter', text(), more).defaultPrevented).toBe(false);
    expect(done).toEqual([]);
  });

  it('that something else has taken are taken', () => {
    listen(true);
    const event = Object.assign(new Event('keydown', { cancelable: true }), { key: 'Enter' });
    event.preventDefault();
    page.dispatchEvent(event);
    expect(done).toEqual([]);
  });

  it.each(['input', 'select', 'textarea', '[contenteditable]'])('in a field (%s) write in it', (field) => {
    listen(true);
    for (const key of [' ', 'Backspace', 'ArrowLeft', 'PageDown']) page.press(key, new Part([field]));
    expect(done).toEqual([]);
  });

  it.each(['button', 'a[href]', 'summary', '[role="button"]', '[tabindex="0"]'])(
    'on a button (%s) press it, the two that do; the others turn rows there too',
    (button) => {
      listen(true);
      for (const key of [' ', 'Enter']) page.press(key, new Part([button]));
      expect(done).toEqual([]);
      for (const key of ['ArrowRight', 'Backspace']) page.press(key, new Part([button]));
      expect(done).toEqual(['row', 'undo']);
    },
  );

  it('belong to an open sheet', () => {
    listen(true);
    page.sheetOpen = true;
    page.press('PageDown');
    expect(done).toEqual([]);
    page.sheetOpen = false;
    page.press('PageDown');
    expect(done).toEqual(['row']);
  });

  it('that come to the page itself turn rows', () => {
    listen(true);
    page.press('Enter', page);
    expect(done).toEqual(['row']);
  });

  it('are not heard any more once the screen is left', () => {
    listen(true);
    stop();
    page.press('Enter');
    expect(done).toEqual([]);
    listen(false);
    stop();
    page.focus(pad());
    page.press('Enter');
    expect(done).toEqual([]);
  });
});
