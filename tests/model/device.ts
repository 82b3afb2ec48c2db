import { stillAir } from './air.ts';
import { emptyDisk } from './disk.ts';
import { type At, Page } from './page.ts';

/** No deed takes so long, on the slowest machine. */
const NO_REST_MS = 60_000;

let boxes = 0;

/** A phone or a tablet: a clock, a disk, and the pages that are open on it. */
export class Device {
  readonly disk = emptyDisk();
  readonly air = stillAir();
  readonly name: string;
  /** its clock, ms; it goes on with every deed, and may be set */
  clock: number;
  pages: Page[] = [];

  constructor(
    readonly letter: string,
    clock: number,
  ) {
    boxes += 1;
    this.name = `model ${process.pid} ${boxes}`;
    this.clock = clock;
  }

  now(): number {
    this.clock += 1000;
    return this.clock;
  }

  async open(at?: At): Promise<Page> {
    const page = await Page.open(this, at);
    this.pages.push(page);
    await this.quiet();
    return page;
  }

  /** The page of that number, counted round. */
  page(n: number): Page {
    return this.pages[n % this.pages.length] as Page;
  }

  async leave(page: Page): Promise<void> {
    this.pages = this.pages.filter((one) => one !== page);
    await page.close();
  }

  /** Until nothing is being read, written or said. */
  async quiet(): Promise<void> {
    const since = performance.now();
    for (let still = 0; still < 4; still += 1) {
      await new Promise((resolve) => setImmediate(resolve));
      if (performance.now() - since > NO_REST_MS)
        throw new Error(`the ${this.letter} does not come to rest: ${this.disk.busy} transactions are open`);
      if (this.disk.busy > 0 || this.air.busy > 0) still = 0;
    }
  }

  async close(): Promise<void> {
    for (const page of this.pages) await page.close();
    this.pages = [];
  }
}
