import type { Page } from 'playwright-core';

/** Everything that can be pressed, typed in or chosen from, as HTML and ARIA have it. */
const controls =
  'a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex], [contenteditable=true], [role=button], [role=link], [role=slider], [role=switch], [role=checkbox], [role=tab], [role=menuitem]';

interface Control {
  readonly name: string;
  readonly isReached: boolean;
}

/**
 * Goes through a page as it stands by Tab alone until it comes round.
 * @param tabbed takes the names of all that had the focus
 * @returns what is wrong for whoever has no pointer: what is not reached (WCAG 2.2, success criterion 2.1.1), has the
 *   focus and does not show it (2.4.7), has it where nothing of it is seen (2.4.11), has it out of the order of reading (2.4.3), or holds it (2.1.2)
 */
export async function notReached(page: Page, tabbed = new Set<string>()): Promise<string[]> {
  const stops = await markControls(page);
  await page.evaluate(lookBeforeEachTab);
  for (let i = 0; i <= stops + 1; i += 1) await page.keyboard.press('Tab');
  const { names, wrong } = await page.evaluate(() => {
    const looked = window as unknown as Looked;
    looked.stopLooking();
    return { names: [...looked.names], wrong: [...looked.wrong] };
  });
  for (const name of names) tabbed.add(name);
  const left = await leftOut(page);
  return [
    ...wrong,
    ...left.filter(({ isReached }) => !isReached).map(({ name }) => `${name} is not reached`),
  ];
}

/** Numbers what is to be reached. @returns how many stops Tab makes for it */
const markControls = (page: Page): Promise<number> =>
  page.evaluate((selector) => {
    const dialog = document.querySelector('dialog[open]');
    const root = dialog ?? document.body;
    let count = 0;
    let stops = 0;
    const choices = new Set<string>();
    for (const marked of document.querySelectorAll('[data-tab]')) marked.removeAttribute('data-tab');
    for (const one of root.querySelectorAll<HTMLElement>(selector)) {
      const isShown =
        one.checkVisibility({ visibilityProperty: true }) &&
        !one.closest('[inert], [aria-hidden=true]') &&
        (dialog !== null || !one.closest('dialog'));
      const isOff = one.matches(':disabled, [aria-disabled=true]');
      // led to by the app, not by Tab: a heading that is told first
      const isHeading = one.matches('[tabindex="-1"]') && !one.matches('a, button, input, [role]');
      if (!isShown || isOff || isHeading) continue;
      count += 1;
      one.dataset.tab = String(count);
      // of a choice one is come to, and what is -1 by the arrow keys of another
      const choice = one.matches('input[type=radio]') ? (one as HTMLInputElement).name : '';
      if (one.tabIndex >= 0 && !choices.has(choice)) stops += 1;
      if (choice) choices.add(choice);
    }
    document.documentElement.dataset.reached = '';
    (document.activeElement as HTMLElement | null)?.blur();
    return stops;
  }, controls);

interface Looked {
  names: Set<string>;
  wrong: Set<string>;
  stopLooking: () => void;
}

/** Runs in the page: looks at what has the focus just before each Tab takes it on, when it has been scrolled to. */
function lookBeforeEachTab(): void {
  const looked = window as unknown as Looked;
  looked.names = new Set();
  looked.wrong = new Set();
  let before: Element | null = null;

  const isMarked = (box: Element | null): boolean => {
    if (!box) return false;
    const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(box);
    return (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 1) || boxShadow !== 'none';
  };
  const fifths = [0.1, 0.3, 0.5, 0.7, 0.9];
  const isClear = (target: Element): boolean => {
    const { left, top, width, height } = target.getBoundingClientRect();
    return fifths.some((x) =>
      fifths.some((y) => {
        const on = document.elementFromPoint(left + width * x, top + height * y);
        return on !== null && (target.contains(on) || on.contains(target));
      }),
    );
  };
  // both looked at in one moment: the page may have moved on; what stays put (head, foot, sheet) is ordered by itself
  const roomOf = (at: Element) => at.closest('.screen-main, .sheet-body, header, footer, nav');
  // a piece is read as it is knitted and drawn: from its cast-on, which lies lowest, up
  const isUpwards = (at: Element) => at.closest('.edit-tree') !== null;
  const goesUp = (at: Element): boolean => {
    if (!before?.isConnected || roomOf(before) === null || roomOf(before) !== roomOf(at)) return false;
    if (isUpwards(before) || isUpwards(at)) return false;
    const [last, here] = [before, at].map((one) => (one.closest('label') ?? one).getBoundingClientRect());
    // the next column, or the next line of a wrapped row, is further to the right
    return (
      last !== undefined &&
      here !== undefined &&
      here.bottom <= last.top + 1 &&
      here.right > last.left &&
      here.left <= last.left
    );
  };
  const look = (event: KeyboardEvent): void => {
    const at = document.activeElement;
    if (event.key !== 'Tab' || !(at instanceof HTMLElement || at instanceof SVGElement)) return;
    if (at === document.body) return;
    const said = (at.getAttribute('aria-label') ?? at.textContent ?? '').trim().slice(0, 40);
    const name = `${at.tagName.toLowerCase()}.${at.getAttribute('class') ?? ''} “${said || at.id}”`;
    looked.names.add(name);
    document.documentElement.dataset.reached += ` ${at.dataset.tab ?? '?'} `;
    // a choice shows the focus at its label, what is typed in at its frame, what is drawn at its lines
    const around = [at, at.closest('label'), at.parentElement, at.nextElementSibling];
    const drawn = [...at.querySelectorAll('svg, svg *')];
    if (![...around, ...drawn].some(isMarked)) looked.wrong.add(`${name} does not show the focus`);
    if (!isClear(at.closest('label') ?? at)) looked.wrong.add(`${name} has the focus unseen`);
    if (goesUp(at)) looked.wrong.add(`${name} is above what had the focus before it`);
    if (at === before) looked.wrong.add(`${name} holds the focus`);
    before = at;
  };
  addEventListener('keydown', look, true);
  looked.stopLooking = () => removeEventListener('keydown', look, true);
}

/** Every control with its answer; of buttons of one choice the one that stands in the row of Tab stands for all. */
const leftOut = (page: Page): Promise<Control[]> =>
  page.evaluate(() => {
    const reached = new Set((document.documentElement.dataset.reached ?? '').split(' '));
    const has = (one: HTMLElement) => reached.has(one.dataset.tab ?? '');
    return [...document.querySelectorAll<HTMLElement>('[data-tab]')].map((one) => {
      const group = one.matches('input[type=radio]') ? (one as HTMLInputElement).name : '';
      // one stop for the whole, the arrows within (ARIA Authoring Practices, roving tabindex)
      const whole = one.closest<HTMLElement>(
        '[role=radiogroup], [role=toolbar], [role=listbox], [role=grid]',
      );
      const fellows = group
        ? [...document.querySelectorAll<HTMLElement>(`input[name="${CSS.escape(group)}"]`)]
        : whole && one.matches('[tabindex="-1"]')
          ? [...whole.querySelectorAll<HTMLElement>('[data-tab]')]
          : one.matches('.number-step')
            ? // its number takes the arrow keys
              [...(one.parentElement?.querySelectorAll<HTMLElement>('input') ?? [])]
            : one.matches('input[type=file][tabindex="-1"]')
              ? // a button of the same name opens it
                [...document.querySelectorAll<HTMLElement>('button')].filter(
                  (it) => it.textContent?.trim() === one.getAttribute('aria-label'),
                )
              : [one];
      const name = `${one.tagName.toLowerCase()}.${one.getAttribute('class') ?? ''} “${(one.getAttribute('aria-label') ?? one.textContent ?? '').trim().slice(0, 40)}”`;
      return { name, isReached: fellows.some(has) };
    });
  });
