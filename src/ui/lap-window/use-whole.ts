import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/**
 * A window that the foot would cut, or that leaves the lengths below it to be cut, yields: half a needle is none. It is asked where it lies once the
 * page is laid out anyway, with every row and whenever what stands above it grows, before that is painted.
 */
export function useWhole(): RefObject<HTMLButtonElement | null> {
  const at = useRef<HTMLButtonElement | null>(null);
  useLayoutEffect(() => {
    const own = at.current;
    const page = own?.closest('main');
    if (!own || !page) return;
    const seen = new ResizeObserver(() => yieldIfCut(own, page));
    for (const one of [page, page.querySelector('.row-place'), own.parentElement]) if (one) seen.observe(one);
    return () => seen.disconnect();
  });
  return at;
}

/** As it is, without the cloth below its needle, below what follows it: the first that is not cut. */
const WAYS = ['', 'lap-low', 'lap-yields'];

function yieldIfCut(own: HTMLElement, page: HTMLElement): void {
  const from = page.getBoundingClientRect().top - page.scrollTop;
  const isCut = (it: Element): boolean => {
    const { top, bottom } = it.getBoundingClientRect();
    return top - from < page.clientHeight && bottom - from > page.clientHeight + 1;
  };
  // nor are the lengths that move with it, where they can be whole too
  for (const those of [[own, ...page.querySelectorAll('.lengths > div')], [own]])
    for (const way of WAYS) {
      own.className = `lap ${way}`;
      if (!those.some(isCut)) return;
    }
}
