import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { linkInFile } from '../../src/app/garments/passing-on.ts';
import { goInstead, goTo, route, startRouting } from '../../src/app/navigate.ts';
import { locked } from '../../src/app/state.ts';

/** A browser's address and its way back, as far as the fragment goes. */
function browser(hash = '') {
  const window = new EventTarget();
  const visited = [hash];
  let replaced = 0;
  let forwards = 0;
  const location = {
    get hash() {
      return visited.at(-1) === '#' ? '' : (visited.at(-1) ?? '');
    },
    set hash(to: string) {
      visited.push(to);
      window.dispatchEvent(new Event('hashchange'));
    },
  };
  const history = {
    state: 'kept',
    forward: () => {
      forwards += 1;
    },
    replaceState: (state: unknown, _title: string, to: string) => {
      expect(state).toBe('kept');
      replaced += 1;
      visited.splice(-1, 1, to);
    },
  };
  vi.stubGlobal('addEventListener', window.addEventListener.bind(window));
  vi.stubGlobal('location', location);
  vi.stubGlobal('history', history);
  startRouting();
  const back = () => {
    visited.pop();
    window.dispatchEvent(new Event('hashchange'));
  };
  return { visited, back, replaced: () => replaced, forwards: () => forwards };
}

describe('addresses', () => {
  beforeEach(() => {
    route.value = undefined;
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    locked.value = false;
  });

  it('stay where they are while the screen is locked: back is gone forward from, read again it is the same', () => {
    const { visited, back, forwards } = browser('#/');
    goTo('#/continue');
    locked.value = true;
    back();
    expect(forwards()).toBe(1);
    expect(route.value).toMatchObject({ screen: 'continue' });
    // the browser comes forward again
    visited.push('#/continue');
    goTo('#/continue');
    expect(forwards()).toBe(1);
    locked.value = false;
    back();
    expect(route.value).toMatchObject({ screen: 'workbasket' });
    expect(forwards()).toBe(1);
  });

  it('without anything behind the # are the workbasket', () => {
    browser('');
    expect(route.value).toMatchObject({ screen: 'workbasket' });
  });

  it('are gone on to, so that back returns', () => {
    const { visited, back } = browser('#/');
    goTo('#/continue');
    expect(route.value).toMatchObject({ screen: 'continue' });
    expect(visited).toEqual(['#/', '#/continue']);
    back();
    expect(route.value).toMatchObject({ screen: 'workbasket' });
  });

  it('where she is already are read again, and back leads no longer way', () => {
    const { visited } = browser('#/continue');
    route.value = undefined;
    goTo('#/continue');
    expect(route.value).toMatchObject({ screen: 'continue' });
    expect(visited).toEqual(['#/continue']);
    const empty = browser('');
    goTo('#/');
    expect(empty.visited).toEqual(['']);
  });

  it('can take the place of the one before: back leads past it', () => {
    const { visited, back, replaced } = browser('#/');
    goTo('#/continue');
    goInstead('#/backup');
    expect(route.value).toMatchObject({ screen: 'backup' });
    expect(visited).toEqual(['#/', '#/backup']);
    expect(replaced()).toBe(1);
    back();
    expect(route.value).toMatchObject({ screen: 'workbasket' });
  });

  it('that no screen has lead nowhere', () => {
    browser('#/no/such/place/at/all');
    expect(route.value).toBeUndefined();
  });
});

describe('a file of one garment', () => {
  it('leads to the address in it, any other file nowhere', async () => {
    expect(await linkInFile(new Blob(['Wren\nhttps://example.org/#/open/aB-9_.z and more']))).toBe(
      '#/open/aB-9_.z',
    );
    expect(await linkInFile(new Blob(['{"a":1}']))).toBeUndefined();
    expect(await linkInFile(new Blob(['#/open/']))).toBeUndefined();
  });

  it('is not looked for in one as large as a backup of photos', async () => {
    const link = '#/open/abc ';
    expect(await linkInFile(new Blob([link, 'x'.repeat(1_000_000)]))).toBeUndefined();
    expect(await linkInFile(new Blob([link, 'x'.repeat(10_000)]))).toBe('#/open/abc');
  });
});
