import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { onPageKeys } from '../../../src/app/device/page-keys.ts';

/** A part of a page that knows only what it is and what it lies in, as selectors. */
class Part extends EventTarget {
  constructor(
    readonly is: readonly string[],
    readonly byKey = false,
  ) {
    super();
  }
  matches(selector: string): boolean {
    return selector === ':focus-visible' && this.byKey;
  }
  closest(selectors: string): Part | null {
    return selectors.split(',').some((one) => this.is.includes(one.trim())) ? this : null;
  }
}

const pad = (byKey = false) => new Part(['.pad', 'button'], byKey);
const text = () => new Part(['p']);

/** The middle of a page, 400 px of 1000 in sight. */
class Middle {
  scrollTop = 0;
  scrollHeight = 1000;
  readonly clientHeight = 400;
  readonly inside = new Part(['p']);
  contains = (at: unknown) => at === this.inside;
  scrollBy({ top }: { readonly top: number }): void {
    this.scrollTop += top;
  }
}

/** A page with something in focus, and a sheet that is open or not. */
class Page extends EventTarget {
  activeElement: Part | null = null;
  sheetOpen = false;
  readonly middle = new Middle();
  querySelector = (selector: string) => {
    if (selector === '.screen-main') return this.middle;
    return this.sheetOpen && selector === 'dialog[open]' ? new Part([]) : null;
  };

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
    expect(page.press('Tab').defaultPrevented).toBe(false);
    expect(page.middle.scrollTop).toBe(0);
  });

  it('scroll what is read where nothing in it has the focus, and are the browser’s where something has', () => {
    listen(false);
    const at = (key: string, more = {}) => {
      page.press(key, text(), more);
      return Math.round(page.middle.scrollTop);
    };
    expect([at('PageDown'), at(' '), at(' ', { shiftKey: true }), at('PageUp')]).toEqual([350, 700, 350, 0]);
    expect([at('ArrowDown'), at('ArrowDown', { repeat: true }), at('ArrowUp')]).toEqual([40, 80, 40]);
    expect(page.press('PageDown', page.middle.inside).defaultPrevented).toBe(false);
    expect(at('Home')).toBe(40);
    page.middle.scrollHeight = page.middle.clientHeight;
    expect(page.press('PageDown').defaultPrevented).toBe(false);
    expect(done).toEqual([]);
  });

  it('that lead to the pad bring the row in sight that it finishes; a finger on it moves nothing', () => {
    listen(false);
    page.middle.scrollTop = 300;
    page.focus(pad());
    expect(page.middle.scrollTop).toBe(300);
    page.focus(pad(true));
    expect(page.middle.scrollTop).toBe(0);
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
