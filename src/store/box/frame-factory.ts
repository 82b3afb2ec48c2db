const classes = [
  'IDBDatabase',
  'IDBTransaction',
  'IDBObjectStore',
  'IDBIndex',
  'IDBCursor',
  'IDBRequest',
] as const;

let last: HTMLIFrameElement | undefined;

/**
 * The database factory of a fresh frame of our own origin. Where a browser has lost its storage process, the page's
 * own factory may answer no more until the page is loaded anew, while a new frame's does.
 */
export async function frameFactory(): Promise<IDBFactory | undefined> {
  if (typeof document === 'undefined' || document.body === null) return undefined;
  const frame = document.createElement('iframe');
  frame.hidden = true;
  frame.title = '';
  frame.setAttribute('aria-hidden', 'true');
  last?.remove();
  last = frame;
  document.body.append(frame);
  const inside = frame.contentWindow as (Window & typeof globalThis) | null;
  if (inside?.indexedDB === undefined) {
    frame.remove();
    return undefined;
  }
  adopt(inside);
  return inside.indexedDB;
}

/** The frame's objects are of its own classes; made heirs of the page's, they are known wherever those are. */
function adopt(inside: Window & typeof globalThis): void {
  for (const name of classes) Object.setPrototypeOf(inside[name].prototype, globalThis[name].prototype);
  for (const step of ['advance', 'continue', 'continuePrimaryKey'] as const) {
    Object.defineProperty(inside.IDBCursor.prototype, step, {
      value: IDBCursor.prototype[step],
      configurable: true,
    });
  }
}
