import type { MakeKey } from '../../../src/progress/log.ts';
import type { Deed } from '../hand.ts';
import type { Truth } from '../truth.ts';

/** What goes wrong while she does something. */

/** The page is killed after so many writes of the deed, at its commit, or right after it; then it is opened again. */
export const killedWhile =
  (deed: Deed): Deed =>
  async (hand) => {
    const { page, device } = hand;
    page.access.fuse = hand.number(7);
    const ways = await deed(hand);
    await device.quiet();
    page.access.fuse = Number.POSITIVE_INFINITY;
    if (!page.dead) return ways;
    const shown = page.last;
    hand.say(`killed when it showed row ${shown?.place.rows}`);
    await device.leave(page);
    await device.open(page.at);
    // it may have told nobody of what it had stored: the others hear of it when they are looked at
    for (const other of device.pages) await other.seen();
    // what was shown as done when it was killed is done
    const first = ways.findIndex((way) => shown === undefined || isIn(way, shown?.make, shown?.place.rows));
    return ways.slice(Math.max(first, 0));
  };

const isIn = ({ makes }: Truth, make: MakeKey | undefined, rows: number | undefined): boolean =>
  make === undefined || makes.get(make)?.rows === rows;

/** The disk takes nothing more while she does it; then there is room again, and she tries again. */
export const onAFullDisk =
  (deed: Deed): Deed =>
  async (hand) => {
    const { page, device, truth } = hand;
    device.disk.full = true;
    const ways = await deed(hand);
    await device.quiet();
    const shown = page.inHand;
    const make = shown && truth.makes.get(shown.make);
    if (shown && make && !page.deaf && shown.place.rows !== make.rows)
      throw new Error(`row ${shown.place.rows} of ${shown.make} is shown while the disk is full`);
    device.disk.full = false;
    hand.say('with no room, and then tried again');
    const waits = page.app.state.waiting.value > 0;
    await page.app.taps.tryAgain();
    await device.quiet();
    // a tap waits for room; all else is refused, and nothing of it is written
    return waits ? ways.slice(-1) : hand.unchanged;
  };
