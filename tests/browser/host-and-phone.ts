import { afterAll, afterEach, beforeAll } from 'vitest';
import { dist } from '../run/built.ts';
import { type Served, serve } from '../run/serve.ts';
import { openPhone, type Phone, type PhoneOptions, removeProfiles } from './drive.ts';

/** The host of a file of tests, and the phones that a test opens. */
export interface HostAndPhone {
  readonly url: string;
  /** the one that was opened last */
  readonly phone: Phone | undefined;
  /** a window that no service worker watches over, closed after the test */
  open(options?: PhoneOptions): Promise<Phone>;
}

/** Of all files that want no more of it than the app: a window that is used again has its files. */
let host: Promise<Served> | undefined;

/** A host that serves the app and never ends. */
export const plainHost = (): Promise<Served> => {
  host ??= serve({ root: dist });
  return host;
};

/** For a whole file of tests: a host that serves the app; what a test opens is closed after it. */
export function hostAndPhone(): HostAndPhone {
  const phones: Phone[] = [];

  let url = '';

  beforeAll(async () => {
    ({ url } = await plainHost());
  });

  afterEach(async () => {
    for (const phone of phones.splice(0)) await phone.close();
  });

  afterAll(removeProfiles);

  return {
    get url() {
      return url;
    },
    get phone() {
      return phones.at(-1);
    },
    async open(options) {
      const phone = await openPhone({ worker: false, ...options });
      phones.push(phone);
      return phone;
    },
  };
}
