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

/** For a whole file of tests: one host that serves the app; what a test opens is closed after it. */
export function hostAndPhone(): HostAndPhone {
  let host: Served;
  const phones: Phone[] = [];

  beforeAll(async () => {
    host = await serve({ root: dist });
  });

  afterEach(async () => {
    for (const phone of phones.splice(0)) await phone.close();
  });

  afterAll(async () => {
    await host.close();
    removeProfiles();
  });

  return {
    get url() {
      return host.url;
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
