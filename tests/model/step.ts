import fc from 'fast-check';
import { type Deed, Hand } from './hand.ts';
import type { World } from './world.ts';

/** Where a deed is done, and by which numbers it chooses. */
export interface Drawn {
  readonly device: number;
  readonly page: number;
  readonly numbers: readonly number[];
}

export const drawn = (): fc.Arbitrary<Drawn> =>
  fc.record({
    device: fc.constantFrom(0, 0, 1, 1, 2),
    page: fc.nat(1),
    numbers: fc.array(fc.nat(999), { minLength: 8, maxLength: 8 }),
  });

/** A deed as fast-check has it: done, and then every law is asked for on every device. */
export class Step implements fc.AsyncCommand<World, World> {
  #said = '';
  constructor(
    readonly name: string,
    readonly deed: Deed,
    readonly where: Drawn,
  ) {}

  check = () => true;

  /** deeds that were done, of all lives, by their names */
  static readonly done = new Map<string, number>();

  async run(world: World): Promise<void> {
    const device = world.devices[this.where.device % world.devices.length];
    if (device === undefined) return;
    if (device.pages.length === 0) await device.open();
    const page = device.page(this.where.page);
    page.stage();
    const hand = new Hand(world, device, page, this.where.numbers);
    try {
      const ways = await this.deed(hand);
      await device.quiet();
      for (const one of world.devices) {
        if (one.pages.length === 0) continue;
        const still = { ...world.truth(one), written: [] };
        await world.check(this.name, one, one === device ? ways : [still]);
      }
    } finally {
      this.#said = hand.said.join(', ');
      if (this.#said !== '') Step.done.set(this.name, (Step.done.get(this.name) ?? 0) + 1);
    }
  }

  toString = () =>
    `${this.name}(${this.where.device}${this.where.page}: ${this.where.numbers.join()})${this.#said && ` ${this.#said}`}`;
}
