import { given } from '../../store/scenario.ts';
import { settled } from '../agrees.ts';
import { seeBox } from '../box-seen.ts';
import type { Deed } from '../hand.ts';
import type { Page } from '../page.ts';
import { takenBackImport } from '../truth-of-imports.ts';
import type { World } from '../world.ts';

/** What comes and goes as a file. */

export async function fileOf(page: Page): Promise<Blob> {
  page.stage();
  return new Blob([given(await page.app.backup.makeBackup()).text]);
}

/** Takes a file in on the page; whether it came in. What was true before is kept, to be taken back to. */
export async function takeIn(
  world: World,
  page: Page,
  file: Blob,
  mode: 'merge' | 'replace',
): Promise<boolean> {
  const { device } = page;
  page.stage();
  const opened = await page.app.backup.openFile(file);
  if (opened === undefined) throw new Error('nobody has stopped the reading of the file');
  const done = await page.app.backup.takeIn(given(opened).backup, mode);
  await device.quiet();
  const [before, box] = [world.truth(device), await seeBox(device)];
  if (done.ok) world.imports.set(device, { before, after: settled(before, box), box });
  return done.ok;
}

/** A backup is put away, for later. */
export const keep: Deed = async (hand) => {
  hand.say('a backup put away');
  hand.world.kept.set(hand.device, { file: await fileOf(hand.page), truth: hand.truth });
  return hand.unchanged;
};

/** Everything is replaced by the backup that was put away. */
export const replace: Deed = async (hand) => {
  const kept = hand.world.kept.get(hand.device);
  if (kept === undefined) return keep(hand);
  hand.say('everything replaced by the backup put away');
  const isDone = await takeIn(hand.world, hand.page, kept.file, 'replace');
  return hand.ended(isDone, { ...kept.truth, written: [] });
};

/** What came in last is taken back; what was done since stays. */
export const takeBack: Deed = async (hand) => {
  const { page, world, device, truth } = hand;
  const last = world.imports.get(device);
  hand.say('what came in is taken back');
  const box = await seeBox(device);
  const done = await page.app.wayBack.takeItBack();
  world.imports.delete(device);
  return hand.ended(done.ok, last === undefined ? truth : takenBackImport(truth, last, box));
};
