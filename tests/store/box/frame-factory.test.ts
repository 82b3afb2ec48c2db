import { afterEach, describe, expect, it, vi } from 'vitest';
import { frameFactory } from '../../../src/store/box/frame-factory.ts';

const names = [
  'IDBDatabase',
  'IDBTransaction',
  'IDBObjectStore',
  'IDBIndex',
  'IDBCursor',
  'IDBRequest',
] as const;
const steps = ['advance', 'continue', 'continuePrimaryKey'] as const;

/** A window with database classes of its own; each cursor's steps tell whose they are. */
function windowOf(whose: string): Record<string, unknown> {
  const classes = names.map((name) => [name, class {}] as const);
  const inside: Record<string, unknown> = { indexedDB: { of: whose }, ...Object.fromEntries(classes) };
  for (const step of steps)
    (inside.IDBCursor as { prototype: object }).prototype[step as never] = (() => whose) as never;
  return inside;
}

interface Frame {
  hidden: boolean;
  title?: string;
  contentWindow: unknown;
  readonly said: Record<string, string>;
  setAttribute: (name: string, value: string) => void;
  remove: () => void;
}

/** A page in which frames with such a window can be opened. */
function page(contents: () => unknown): Frame[] {
  const there: Frame[] = [];
  const createElement = (): Frame => {
    const frame: Frame = {
      hidden: false,
      contentWindow: undefined,
      said: {},
      setAttribute: (name, value) => {
        frame.said[name] = value;
      },
      remove: () => void there.splice(there.indexOf(frame), 1),
    };
    return frame;
  };
  const append = (frame: Frame) => {
    frame.contentWindow = contents();
    there.push(frame);
  };
  vi.stubGlobal('document', { createElement, body: { append } });
  return there;
}

afterEach(() => vi.unstubAllGlobals());

describe('the database of a fresh frame', () => {
  it('is of an unseen frame, of which there is one at a time', async () => {
    for (const [name, value] of Object.entries(windowOf('page'))) vi.stubGlobal(name, value);
    const there = page(() => windowOf('frame'));
    expect(await frameFactory()).toEqual({ of: 'frame' });
    await frameFactory();
    expect(there).toHaveLength(1);
    expect(there[0]).toMatchObject({ hidden: true, title: '', said: { 'aria-hidden': 'true' } });
  });

  it('has objects that are known wherever the page’s own are, and cursors that step as the page’s do', async () => {
    const own = windowOf('page');
    for (const [name, value] of Object.entries(own)) vi.stubGlobal(name, value);
    const inside = windowOf('frame') as Record<(typeof names)[number], new () => object>;
    page(() => inside);
    await frameFactory();
    for (const name of names)
      expect(new inside[name]() instanceof (own[name] as new () => object), name).toBe(true);
    const cursor = new inside.IDBCursor() as Record<string, () => string>;
    for (const step of steps) expect(cursor[step]?.()).toBe('page');
  });

  it('is none where there is no page, or the frame has none', async () => {
    vi.stubGlobal('document', undefined);
    expect(await frameFactory()).toBeUndefined();
    vi.stubGlobal('document', { body: null });
    expect(await frameFactory()).toBeUndefined();
    const there = page(() => ({}));
    expect(await frameFactory()).toBeUndefined();
    expect(there).toEqual([]);
    page(() => null);
    expect(await frameFactory()).toBeUndefined();
  });
});
