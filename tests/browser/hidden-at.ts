import type { Page } from 'playwright-core';

/** What of a row is not in sight above the pad, or is broken, at each size of text. */
export const hiddenAt = (page: Page, sizes: readonly number[]): Promise<string[]> =>
  page.evaluate((percents) => {
    const box = (selector: string) => document.querySelector(selector)?.getBoundingClientRect();
    const lines = (selector: string): number => {
      const range = document.createRange();
      const at = document.querySelector(selector);
      if (at) range.selectNodeContents(at);
      return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
    };
    /** Numbers of the row's words that stand on another line than what they count. */
    const parted = (): string[] => {
      const work = document.querySelector('.row-work');
      const texts = document.createTreeWalker(work ?? document.body, NodeFilter.SHOW_TEXT);
      const both: string[] = [];
      for (let text = texts.nextNode(); text; text = texts.nextNode())
        for (const { 0: words, index } of (text.nodeValue ?? '').matchAll(/\d\s\p{L}+/gu)) {
          const range = document.createRange();
          range.setStart(text, index);
          range.setEnd(text, index + words.length);
          if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1)
            both.push(words);
        }
      return both;
    };
    const found: string[] = [];
    for (const percent of percents) {
      document.documentElement.style.fontSize = `${percent}%`;
      const main = box('.screen-main');
      const foot = box('.screen-foot');
      if (main === undefined || foot === undefined) return ['nothing is there'];
      // upright the pad lies below what is read; on its side it lies beside it
      const isBeside = foot.left >= main.right - 1 || foot.right <= main.left + 1;
      const [top, bottom] = [Math.max(main.top, 0), isBeside ? innerHeight : Math.min(foot.top, innerHeight)];
      const at = `${innerWidth} × ${innerHeight} at ${percent} %`;
      if (lines('.row-count') !== 1) found.push(`${at}: the count stands on ${lines('.row-count')} lines`);
      const [words, count, after] = [box('.row-work'), box('.row-count'), box('.row-after')];
      if (words === undefined || count === undefined || after === undefined) return ['no row is there'];
      // the count stays while longer words are scrolled below it; on its side it stands beside them
      const under = after.left >= words.right - 1 ? bottom : Math.min(bottom, after.top);
      if (words.top < top - 1 || words.bottom > under + 1)
        found.push(`${at}: the words end at ${words.bottom.toFixed()} of ${under.toFixed()}`);
      if (count.top < top - 1 || count.bottom > bottom + 1)
        found.push(`${at}: the count ends at ${count.bottom.toFixed()} of ${bottom.toFixed()}`);
      found.push(...parted().map((both) => `${at}: ‘${both}’ is parted by a line’s end`));
      if (count.height < 36) found.push(`${at}: the count is ${count.height.toFixed()} px high`);
    }
    document.documentElement.style.fontSize = '';
    return found;
  }, sizes);

/** What of a notice above the pad cannot be read at each size of text: its title is there whole, the rest by a sign and a scroll. */
export const cutNoticeAt = (page: Page, sizes: readonly number[]): Promise<string[]> =>
  page.evaluate((percents) => {
    const found: string[] = [];
    for (const percent of percents) {
      document.documentElement.style.fontSize = `${percent}%`;
      const notice = document.querySelector<HTMLElement>('.screen-foot > .notice');
      const title = notice?.querySelector('.notice-title');
      if (!notice || !title) return ['nothing is told'];
      const at = `${innerWidth} × ${innerHeight} at ${percent} %`;
      const [box, words] = [notice.getBoundingClientRect(), title.getBoundingClientRect()];
      if (words.top < box.top || words.bottom > box.bottom - 1 || words.right > box.right)
        found.push(`${at}: the notice’s title ends at ${words.bottom.toFixed()} of ${box.bottom.toFixed()}`);
      if (notice.scrollHeight <= notice.clientHeight + 1) continue;
      // what covers the sign scrolls with the words, so that it is seen until their end
      const { backgroundAttachment, overflowY } = getComputedStyle(notice);
      if (!backgroundAttachment.startsWith('local, scroll'))
        found.push(`${at}: nothing says that more follows`);
      if (overflowY !== 'auto' || !notice.matches('[tabindex], :has(button)'))
        found.push(`${at}: its rest cannot be scrolled to`);
    }
    document.documentElement.style.fontSize = '';
    return found;
  }, sizes);
