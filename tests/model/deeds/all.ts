import type { Deed } from '../hand.ts';
import { goApart } from './apart.ts';
import { edit, save } from './editing.ts';
import { keep, replace, takeBack } from './files.ts';
import {
  beginGarment,
  changeFigures,
  deleteGarment,
  linkTwice,
  photograph,
  tickStep,
  writeNotes,
} from './garments.ts';
import { jot, setPlace, tap, tapBoth, tapInBoth, undo } from './knitting.ts';
import { killedWhile, onAFullDisk } from './mishaps.ts';
import { closePage, deafen, openPage, reload, setClock } from './pages.ts';
import { planAnew } from './planning.ts';

import { exchange, replaceByOther, unite } from './unite.ts';

import { chooseWay } from './ways.ts';

interface Kind {
  readonly deed: Deed;
  readonly weight: number;
}

/** All that she may do, and how often. */
export const deeds: Readonly<Record<string, Kind>> = {
  tap: { deed: tap, weight: 12 },
  undo: { deed: undo, weight: 4 },
  'set the place': { deed: setPlace, weight: 2 },
  'jot down': { deed: jot, weight: 2 },
  'tap both': { deed: tapBoth, weight: 2 },
  'plan anew': { deed: planAnew, weight: 6 },
  'begin a garment': { deed: beginGarment, weight: 3 },
  'delete a garment': { deed: deleteGarment, weight: 1 },
  'write notes': { deed: writeNotes, weight: 2 },
  'tick a step': { deed: tickStep, weight: 2 },
  photograph: { deed: photograph, weight: 3 },
  'photograph, killed': { deed: killedWhile(photograph), weight: 1 },
  'photograph on a full disk': { deed: onAFullDisk(photograph), weight: 1 },
  'change figures': { deed: changeFigures, weight: 2 },
  'open a link twice': { deed: linkTwice, weight: 1 },
  'replace by the other': { deed: replaceByOther, weight: 1 },
  'open a window': { deed: openPage, weight: 2 },
  'close a window': { deed: closePage, weight: 1 },
  edit: { deed: edit, weight: 5 },
  save: { deed: save, weight: 4 },
  'save, killed': { deed: killedWhile(save), weight: 1 },
  'save on a full disk': { deed: onAFullDisk(save), weight: 1 },
  'go apart and meet': { deed: goApart, weight: 4 },
  'choose a way': { deed: chooseWay, weight: 3 },
  unite: { deed: unite, weight: 3 },
  exchange: { deed: exchange, weight: 2 },
  'put a backup away': { deed: keep, weight: 1 },
  replace: { deed: replace, weight: 1 },
  'take back': { deed: takeBack, weight: 1 },
  reload: { deed: reload, weight: 1 },
  'set the clock': { deed: setClock, weight: 1 },
  'a window hears nothing': { deed: deafen, weight: 1 },
  'tap in both windows': { deed: tapInBoth, weight: 2 },
  'tap, killed': { deed: killedWhile(tap), weight: 2 },
  'undo, killed': { deed: killedWhile(undo), weight: 1 },
  'tap both, killed': { deed: killedWhile(tapBoth), weight: 1 },
  'plan anew, killed': { deed: killedWhile(planAnew), weight: 2 },
  'begin a garment, killed': { deed: killedWhile(beginGarment), weight: 1 },
  'delete a garment, killed': { deed: killedWhile(deleteGarment), weight: 1 },
  'tap on a full disk': { deed: onAFullDisk(tap), weight: 2 },
  'undo on a full disk': { deed: onAFullDisk(undo), weight: 1 },
  'plan anew on a full disk': { deed: onAFullDisk(planAnew), weight: 1 },
  'write notes on a full disk': { deed: onAFullDisk(writeNotes), weight: 1 },
  'begin a garment on a full disk': { deed: onAFullDisk(beginGarment), weight: 1 },
};
