/**
 * What the platform itself costs: Preact, signals, idb and one button that stores a number. It does as the app does
 * where that is a promise: the number is shown only when it is on disk, and everything is there with no network.
 */
import { signal } from '@preact/signals';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { render } from 'preact';

interface Bare extends DBSchema {
  numbers: { key: string; value: number };
}

const number = signal<number | undefined>(undefined);

const opening: Promise<IDBPDatabase<Bare>> = openDB<Bare>('bare', 1, {
  upgrade: (db) => void db.createObjectStore('numbers'),
});

async function read(): Promise<void> {
  number.value = (await (await opening).get('numbers', 'number')) ?? 0;
}

async function store(): Promise<void> {
  const next = (number.value ?? 0) + 1;
  const tx = (await opening).transaction('numbers', 'readwrite', { durability: 'strict' });
  await Promise.all([tx.store.put(next, 'number'), tx.done]);
  number.value = next;
}

function Page() {
  return (
    <main>
      <p>
        <output>{number.value === undefined ? '' : `Number ${number.value}`}</output>
      </p>
      <button type="button" onClick={() => void store()}>
        Store the next number
      </button>
    </main>
  );
}

async function register(): Promise<void> {
  const { Workbox } = await import('workbox-window');
  await new Workbox('sw.js').register({ immediate: true });
}

const root = document.getElementById('app');
if (root) {
  void read();
  render(<Page />, root);
  requestAnimationFrame(() => setTimeout(() => void register().catch(() => undefined)));
}
