import { signal } from '@preact/signals';
import { fault, type Result, refuse } from '../../knit/fault.ts';
import { type WayBack, wayBackIn } from '../../store/backup/own-settings.ts';
import type { TakenBack } from '../../store/backup/way-back.ts';
import { store } from '../store.ts';

/** The last backup that was taken in, as far as it can be taken back; undefined where there is none, or until read. */
export const wayBack = signal<Pick<WayBack, 'at' | 'mode' | 'hidden'> | undefined>(undefined);

const part = () => import('../../store/backup/way-back.ts').catch(() => undefined);

export async function readWayBack(): Promise<void> {
  const settings = await (await store()).settings();
  if (settings.ok) wayBack.value = wayBackIn(settings.value);
}

/** Undoes what the last backup that was taken in has changed; what was knitted since stays. */
export async function takeItBack(): Promise<Result<TakenBack>> {
  const done = (await (await part())?.takeBack((await store()).box)) ?? refuse(fault('app-incomplete'));
  await readWayBack();
  return done;
}

/** She wants it to stay so: it is offered only where backups are. */
export async function leaveItSo(): Promise<void> {
  await (await part())?.hideWayBack((await store()).box);
  await readWayBack();
}

/** A newer backup holds what is there now. */
export async function endWayBack(): Promise<void> {
  await (await part())?.forgetWayBack((await store()).box);
  await readWayBack();
}
