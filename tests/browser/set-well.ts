import type { Page } from 'playwright-core';

/** What is badly set in a page as it stands: each finding names what it is and where. */
export interface Ill {
  /** words broken in two without a hyphen */
  readonly broken: readonly string[];
  /** numbers parted by a line's end from their units or from what they count, 'row' from its number */
  readonly parted: readonly string[];
  /** texts that are cut off, with no way to scroll to the rest */
  readonly cut: readonly string[];
  /** what is pressed, and is smaller than a finger: 44 px (WCAG 2.2, success criterion 2.5.5; a link within a sentence is excepted there too) */
  readonly small: readonly string[];
}

/** Looks at every text and every target that is shown. */
export const illSet = (page: Page): Promise<Ill> =>
  page.evaluate(() => {
    const dialog = document.querySelector('dialog[open]');
    const root = dialog ?? document.body;
    const broken = new Set<string>();
    const parted = new Set<string>();
    const cut = new Set<string>();
    const small = new Set<string>();

    const isShown = (at: Element): boolean =>
      at.checkVisibility({ opacityProperty: true, visibilityProperty: true }) &&
      !at.closest('.spoken, option') &&
      // out of sight where there is no room, and still told to a reader
      getComputedStyle(at).clipPath !== 'inset(50%)';
    const nameOf = (at: Element): string =>
      `${at.closest('[class]')?.getAttribute('class') ?? at.tagName} “${(at.textContent ?? '').trim().slice(0, 40)}”`;
    const linesOf = (node: Node, from: number, to: number): number[] => {
      const range = document.createRange();
      range.setStart(node, from);
      range.setEnd(node, to);
      const tops: number[] = [];
      for (const { top, width, height } of range.getClientRects())
        if (width > 0 && !tops.some((one) => Math.abs(one - top) < height / 3)) tops.push(top);
      return tops;
    };

    /** The nearest box that is seen: what lies beyond it lies on something else. */
    const groundOf = (at: Element): Element => {
      for (let box: Element | null = at; box && box !== document.body; box = box.parentElement) {
        const { borderInlineStartWidth, borderBlockEndWidth, backgroundColor, overflowX, display } =
          getComputedStyle(box);
        if (display === 'inline') continue;
        const hasEdge =
          Number.parseFloat(borderInlineStartWidth) > 0 && Number.parseFloat(borderBlockEndWidth) > 0;
        if (hasEdge || !/^rgba\(.*, 0\)$/.test(backgroundColor) || overflowX !== 'visible') return box;
      }
      return document.body;
    };

    /** The nearest box that cuts what lies beyond it and cannot be scrolled. */
    const cutter = (at: Element): Element | undefined => {
      for (let box: Element | null = at; box && box !== document.body; box = box.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(box);
        if (/auto|scroll/.test(overflowX + overflowY)) return undefined;
        if (/hidden|clip/.test(overflowX + overflowY)) return box;
      }
      return undefined;
    };

    const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const at = node.parentElement;
      const text = node.nodeValue ?? '';
      if (!at || text.trim() === '' || !isShown(at)) continue;
      // an address or a code has no places to be broken at; what is typed is broken as the field has it
      if (at.closest('textarea, code, .pass-on-link, svg')) continue;
      // a text on one line has nothing broken, and most are
      const words = linesOf(node, 0, text.length).length > 1 ? text : '';
      // the browser of these tests knows no language's rules for hyphens: what breaks here breaks without one
      // the hyphen of a place where a word may be parted is drawn with the first letter behind it
      for (const { 0: word, index } of words.matchAll(/[\p{L}\p{M}’]{2,}/gu))
        if (linesOf(node, index + (words[index - 1] === '\u00ad' ? 1 : 0), index + word.length).length > 1)
          broken.add(`${word} in ${nameOf(at)}`);
      // a text that was copied is quoted as it stands
      for (const { 0: both, index } of words.matchAll(
        /[\d¼½¾⅛⅜⅝⅞]\s(cm|mm|in|Zoll|g|m|yd|Yards|%|stitch(es)?|sts?|rows?|balls?|Maschen?|M|Reihen?|Knäuel|mailles?|rangs?)(?!\p{L})|(?<!\p{L})(row|Reihe|rang)\s\d+(?! (of|von|sur) )/giu,
      ))
        if (!at.closest('.pattern-said') && linesOf(node, index, index + both.length).length > 1)
          parted.add(`${both} in ${nameOf(at)}`);
      const under = groundOf(at);
      // what a finger and the keys move comes into sight
      const isMoved = under.hasAttribute('tabindex') && /auto|scroll/.test(getComputedStyle(under).overflowX);
      const ground = under.getBoundingClientRect();
      const own = document.createRange();
      own.selectNodeContents(node);
      const lies = own.getBoundingClientRect();
      if (!isMoved && (lies.right > ground.right + 1 || lies.left < ground.left - 1))
        cut.add(
          `${nameOf(at)} by ${Math.max(lies.right - ground.right, ground.left - lies.left).toFixed()} px`,
        );
      const box = cutter(at);
      if (box) {
        const range = document.createRange();
        range.selectNodeContents(node);
        const [has, of] = [range.getBoundingClientRect(), box.getBoundingClientRect()];
        if (
          has.right > of.right + 1 ||
          has.left < of.left - 1 ||
          has.bottom > of.bottom + 2 ||
          has.top < of.top - 2
        )
          cut.add(nameOf(at));
      }
    }
    for (const text of root.querySelectorAll('svg text')) {
      if (!isShown(text)) continue;
      const [has, of] = [text.getBoundingClientRect(), text.closest('svg')?.getBoundingClientRect()];
      if (
        of &&
        getComputedStyle(text.closest('svg') as Element).overflow !== 'visible' &&
        (has.right > of.right + 1 ||
          has.left < of.left - 1 ||
          has.bottom > of.bottom + 2 ||
          has.top < of.top - 2)
      )
        cut.add(nameOf(text));
    }

    const pressed =
      'button, a[href], summary, select, textarea, input:not([type=hidden]), [role=button], [role=slider][tabindex]';
    for (const one of root.querySelectorAll(pressed)) {
      if (one.closest('[inert], .spoken') || (dialog === null && one.closest('dialog'))) continue;
      // a link within a sentence is as high as its line
      if (one.matches('a') && getComputedStyle(one).display === 'inline') continue;
      // what is touched of a box to tick, or of a choice, is its label
      const target = one.matches('input[type=radio], input[type=checkbox], input[type=file]')
        ? (one.closest('label') ?? document.querySelector(`label[for="${one.id}"]`) ?? one)
        : one;
      if (!isShown(target)) continue;
      const { width, height } = target.getBoundingClientRect();
      if (width > 0 && (width < 43.5 || height < 43.5))
        small.add(`${nameOf(target)} ${width.toFixed()} × ${height.toFixed()}`);
    }
    return { broken: [...broken], parted: [...parted], cut: [...cut], small: [...small] };
  });
