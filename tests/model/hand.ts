import type { MakeKey } from '../../src/progress/log.ts';
import type { Device } from './device.ts';
import type { At, Page } from './page.ts';
import type { Truth } from './truth.ts';
import type { World } from './world.ts';

/** What a deed has: where it is done, what is true before it, and numbers to choose by. */
export class Hand {
  /** what it did, for the one who reads of it */
  readonly said: string[] = [];
  #next = 0;

  constructor(
    readonly world: World,
    readonly device: Device,
    readonly page: Page,
    readonly numbers: readonly number[],
  ) {}

  get truth(): Truth {
    return this.world.truth(this.device);
  }

  /** a number below `most` */
  number(most: number): number {
    const drawn = this.numbers[this.#next % this.numbers.length] ?? 0;
    this.#next += 1;
    return most <= 0 ? 0 : drawn % most;
  }

  pick<T>(list: readonly T[]): T | undefined {
    return list[this.number(list.length)];
  }

  /** A make: as often as not one that is begun, or the one that the page shows. */
  make(): MakeKey | undefined {
    const all = [...this.truth.makes.keys()].sort();
    const begun = all.filter((key) => (this.truth.makes.get(key)?.rows ?? 0) > 0);
    const shown = all.filter((key) => 'make' in this.page.at && this.page.at.make === key);
    const among = [begun, shown, all, all][this.number(4)] ?? all;
    return this.pick(among.length > 0 ? among : all);
  }

  garment(): string | undefined {
    return this.pick([...this.truth.garments.keys()].sort());
  }

  /** On the page that shows it; a page that is there already reads nothing anew. */
  async at(at: At): Promise<void> {
    if (JSON.stringify(this.page.at) !== JSON.stringify(at)) await this.page.go(at);
    await this.device.quiet();
  }

  say(what: string): void {
    this.said.push(what);
  }

  /**
   * How a deed has ended: as it was before where it was refused, as it is to be where it was done; where the page was
   * killed meanwhile, anything of that in its order.
   */
  ended(isDone: boolean, ...ways: readonly Truth[]): readonly Truth[] {
    if (this.page.dead) return [...this.unchanged, ...ways];
    return isDone ? ways.slice(-1) : this.unchanged;
  }

  /** Nothing has come of it. */
  get unchanged(): readonly [Truth] {
    return [{ ...this.truth, written: [] }];
  }
}

/** Something that she does; gives what may be true after it. */
export type Deed = (hand: Hand) => Promise<readonly Truth[]>;
