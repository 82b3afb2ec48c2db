import type { GarmentRecord } from '../../src/store/records.ts';
import { disagreement, settled } from './agrees.ts';
import { type BoxSeen, seeBox } from './box-seen.ts';
import { Device } from './device.ts';
import {
  canBeBackedUp,
  everyMakeHasAPlace,
  placesFitTheirPlans,
  placesTellOfWays,
  shownIsStored,
  unbegunPlansAreTheirRecipes,
} from './laws.ts';
import { nothingYet, type Truth } from './truth.ts';
import type { Import } from './truth-of-imports.ts';

/** what the clocks of both devices show when a life begins, ms */
const BEGAN = 1_700_000_000_000;

/** Everything of hers: two devices, what is true of the box of each, and garments that she may begin. */
export class World {
  readonly devices: readonly Device[];
  /** a backup that each device has put away, and what was true then */
  readonly kept = new Map<Device, { readonly file: Blob; readonly truth: Truth }>();
  /** what was true on each device before and after the last backup that came in */
  readonly imports = new Map<Device, Import>();
  readonly #truths = new Map<Device, Truth>();
  readonly #boxes = new Map<Device, string>();

  constructor(readonly wardrobe: readonly GarmentRecord[]) {
    this.devices = ['phone', 'tablet', 'old phone'].map((name) => new Device(name, BEGAN));
  }

  truth(device: Device): Truth {
    return this.#truths.get(device) ?? nothingYet;
  }

  /** A deed on one device has changed another too. */
  meanwhile(device: Device, truth: Truth): void {
    this.#truths.set(device, truth);
  }

  /** Takes one of the ways in which a deed may have ended as the truth, and asks for every law. */
  async check(deed: string, device: Device, ways: readonly Truth[]): Promise<Truth> {
    const box = await seeBox(device);
    const found = ways.find((way) => disagreement(way, box) === undefined);
    if (found === undefined) {
      const last = ways.at(-1) as Truth;
      throw new Error(`${deed}, ${device.letter}: ${disagreement(last, box)}`);
    }
    this.#truths.set(device, settled(found, box));
    await this.#laws(deed, device, box);
    return found;
  }

  async #laws(deed: string, device: Device, box: BoxSeen): Promise<void> {
    const wrong =
      everyMakeHasAPlace(box) ??
      placesFitTheirPlans(box) ??
      placesTellOfWays(box) ??
      unbegunPlansAreTheirRecipes(box) ??
      (await this.#shown(device, box)) ??
      (await this.#backedUp(device, box));
    if (wrong !== undefined) throw new Error(`${deed}, ${device.letter}: ${wrong}`);
  }

  async #shown(device: Device, box: BoxSeen): Promise<string | undefined> {
    let wrong: string | undefined;
    // what is still being read on a busy machine is no fault
    for (let asked = 0; asked < 50; asked += 1) {
      wrong = device.pages
        .filter(({ deaf }) => !deaf)
        .map((page) => shownIsStored(page, box))
        .find((found) => found !== undefined);
      if (wrong === undefined) return undefined;
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    return wrong;
  }

  async #backedUp(device: Device, box: BoxSeen): Promise<string | undefined> {
    const state = JSON.stringify([[...box.garments], [...box.log.keys()]]);
    if (this.#boxes.get(device) === state) return undefined;
    this.#boxes.set(device, state);
    const [page] = device.pages;
    return page && canBeBackedUp(page, box, device);
  }

  async close(): Promise<void> {
    for (const device of this.devices) await device.close();
  }
}
