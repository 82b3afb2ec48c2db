import { useLayoutEffect } from 'preact/hooks';

/**
 * While the component stands there the page's root has the class `has-…`: what is around it and before it is laid out by
 * that. `:has()` says the same, but with it every element that comes or goes asks all that are around it, and in hand
 * some do with each tap.
 */
export function useShows(what: string): void {
  useLayoutEffect(() => {
    const mark = (isShown: boolean) => document.documentElement.classList.toggle(`has-${what}`, isShown);
    mark(true);
    return () => mark(false);
  }, []);
}
