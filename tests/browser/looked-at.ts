import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { type Knitter, knitterAt } from './knitter.ts';
import { type Look, openSettings, wear } from './looks.ts';
import { settled } from './settled.ts';
import { atRow, sights } from './sights.ts';

export const plain: Look = { name: 'plain', width: 390, height: 844 };
export const small: Look = { ...plain, name: 'small', width: 320, height: 640 };
export const germanLarge: Look = { ...plain, name: 'German, large', text: 200, language: 'Deutsch' };
export const smallGermanLarge: Look = {
  ...germanLarge,
  name: 'small German, large',
  width: 320,
  height: 640,
};
export const onItsSide: Look = { name: 'side', width: 844, height: 390 };
export const tablet: Look = { name: 'tablet', width: 1180, height: 820 };

/** For a file of tests that look where things stand: a window with the sample, in plain letters before each test. */
export function lookedAt() {
  let phone: Phone;
  let settings: Page;
  let knitter: Knitter;
  let url: string;

  beforeAll(async () => {
    ({ url } = await plainHost());
    phone = await openPhone({ reducedMotion: 'reduce', worker: false });
    knitter = knitterAt(phone.page, url);
    await knitter.openSample();
    settings = await openSettings(phone.page, url);
  });

  afterEach(() => wear(phone.page, settings, plain));

  afterAll(async () => {
    await phone.close();
    removeProfiles();
  });

  /** Where each stands: its edges, whole px. */
  const boxes = (selector: string) =>
    phone.page.locator(selector).evaluateAll((all) =>
      all
        .filter((it) => it.checkVisibility())
        .map((it) => it.getBoundingClientRect())
        .map(({ left, right, top, bottom }) => ({
          left: Math.round(left),
          right: Math.round(right),
          top: Math.round(top),
          bottom: Math.round(bottom),
        })),
    );

  return {
    page: () => phone.page,
    settings: () => settings,
    knitter: () => knitter,
    url: () => url,
    boxes,

    /** Comes to sights one after the other, in plain letters. */
    async come(...names: readonly string[]): Promise<void> {
      await wear(phone.page, settings, plain);
      for (const name of names) await sights.find((one) => one.name === name)?.come(phone.page, knitter);
    },

    /** The back at a row, which it may be at from a test before, or at its end. */
    async toRow(row: number): Promise<void> {
      await wear(phone.page, settings, plain);
      await knitter.open('#/k/sample/back/0/1');
      await knitter.pad.or(phone.page.locator('.part-end')).first().waitFor();
      if (!(await knitter.pad.isVisible()) || (await knitter.row()).row !== row)
        await atRow(phone.page, knitter, row);
    },

    async look(at: Look): Promise<void> {
      await wear(phone.page, settings, at);
      await settled(phone.page);
    },

    /** Of the lengths of a row, those that the foot cuts. */
    async cutLengths() {
      const [foot] = await boxes('.screen-foot');
      return (await boxes('.lengths dt, .lengths dd')).filter(
        ({ top, bottom }) => top < (foot?.top ?? 0) && bottom > (foot?.top ?? 0) - 4,
      );
    },
  };
}
