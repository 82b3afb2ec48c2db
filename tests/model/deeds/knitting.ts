import type { MakeKey } from '../../../src/progress/log.ts';
import { fingerprint } from '../box-seen.ts';
import type { Deed } from '../hand.ts';
import type { Page } from '../page.ts';
import { knitted, moved, type Truth, takenBack } from '../truth.ts';

/** Whether the page shows the make as it is: a tap on anything else is to be refused. */
function isShown(page: Page, truth: Truth, key: MakeKey): boolean {
  const shown = page.inHand;
  const make = truth.makes.get(key);
  return (
    shown?.make === key &&
    make !== undefined &&
    shown.place.rows === make.rows &&
    fingerprint(shown.part) === make.print
  );
}

/** Rows finished on the knitting screen, tapped faster than they are stored. */
export const tap: Deed = async (hand) => {
  const make = hand.make();
  if (make === undefined) return hand.unchanged;
  await hand.at({ screen: 'knitting', make });
  const { page, truth } = hand;
  const taps = 1 + hand.number(4);
  const shown = page.inHand;
  const left = shown ? shown.part.rows.length - shown.place.rows : 0;
  const rows = isShown(page, truth, make) ? Math.min(taps, left) : 0;
  hand.say(`${taps} taps on ${make} at row ${shown?.place.rows}`);
  await Promise.all(Array.from({ length: taps }, () => page.app.knit.finishRow()));
  return hand.ended(true, ...Array.from({ length: rows + 1 }, (_, i) => knitted(truth, make, i)));
};

export const undo: Deed = async (hand) => {
  const make = hand.make();
  if (make === undefined) return hand.unchanged;
  await hand.at({ screen: 'knitting', make });
  const { page, truth } = hand;
  const back = isShown(page, truth, make) ? takenBack(truth, make) : undefined;
  hand.say(`undo on ${make} at row ${page.inHand?.place.rows}`);
  await page.app.knit.undoRow();
  return hand.ended(back !== undefined, back ?? truth);
};

/** A row found again, or ripped back to. */
export const setPlace: Deed = async (hand) => {
  const make = hand.make();
  if (make === undefined) return hand.unchanged;
  await hand.at({ screen: 'count', make });
  const { page, truth } = hand;
  const shown = page.inHand;
  if (!shown) return hand.unchanged;
  const rows = hand.number(shown.part.rows.length + 1);
  const kind = hand.number(2) === 0 ? 'place' : 'rip back';
  hand.say(`${kind} to row ${rows} of ${make}`);
  const isDone = await page.app.count.setPlace(rows, kind);
  return hand.ended(isDone, moved(truth, make, { rows, print: fingerprint(shown.part) }, [kind]));
};

/** A note, a check or a lifeline at the row in hand; or the last of them struck out. */
export const jot: Deed = async (hand) => {
  const make = hand.make();
  if (make === undefined) return hand.unchanged;
  await hand.at({ screen: 'count', make });
  const { page, truth } = hand;
  if (!page.inHand) return hand.unchanged;
  const { entries = [] } = page.app.count.logInHand.value ?? {};
  const jotted = entries.find(({ kind }) => kind === 'note' || kind === 'check');
  const which = hand.number(4);
  const entry =
    which === 3 && jotted
      ? ({ kind: 'strike', undoes: jotted.id } as const)
      : which === 0
        ? ({ kind: 'check', count: hand.number(60) } as const)
        : ({ kind: which === 1 ? 'note' : 'lifeline', text: 'a green thread' } as const);
  hand.say(`${entry.kind} on ${make}`);
  const isDone = (await page.app.count.logEntry(entry)) && isShown(page, truth, make);
  return hand.ended(isDone, { ...truth, written: [entry.kind] });
};

/** A row of both makes of a piece that lie on one needle. */
export const tapBoth: Deed = async (hand) => {
  const make = hand.make();
  if (make === undefined) return hand.unchanged;
  await hand.at({ screen: 'count', make });
  const { page, truth } = hand;
  const [piece, part] = [make.split('/')[1], Number(make.split('/')[2])];
  const view = page.app.state.garmentInHand.value?.pieces.find(({ id }) => id === piece);
  const places = (view?.makes ?? []).flatMap((one) => one.places.filter((place) => place.part === part));
  if (places.length < 2) return hand.unchanged;
  const rows = places.slice(0, 2).map(({ id, rows: worked, plan }) => ({ key: id, row: worked + 1, plan }));
  hand.say(`a row of each: ${JSON.stringify(rows)}`);
  const isDone = await page.app.count.finishRows(rows);
  const both = rows.reduce(
    (now, { key }) => ({ ...knitted(now, key, 1), written: [...(now.written ?? []), 'row' as const] }),
    { ...truth, written: [] as readonly 'row'[] } as typeof truth,
  );
  return hand.ended(isDone, both);
};

/** The same row done in both windows in the same moment. */
export const tapInBoth: Deed = async (hand) => {
  const make = hand.make();
  if (make === undefined || hand.device.pages.length < 2) return hand.unchanged;
  const { truth, device } = hand;
  for (const page of device.pages)
    if (page.at.screen !== 'knitting' || page.at.make !== make) await page.go({ screen: 'knitting', make });
  await device.quiet();
  const meant = device.pages.filter((page) => {
    const shown = page.inHand;
    return isShown(page, truth, make) && shown && shown.place.rows < shown.part.rows.length;
  });
  hand.say(`the next row of ${make} in two windows`);
  await Promise.all(device.pages.map((page) => page.app.knit.finishRow()));
  return [knitted(truth, make, meant.length > 0 ? 1 : 0)];
};
