import type { BrowserContext, CDPSession, Page } from 'playwright-core';

/** A page that can be measured: the app, or the yardstick. */
export interface Subject {
  /** where it is, hash included, once it has something to show */
  readonly address: string;
  /** the text that says how far it is, and that changes with every tap once that is on disk */
  readonly shows: string;
  /** the text that is read while working, and that changes with every tap; the bare page has but the one */
  readonly reads: string;
  /** what is tapped */
  readonly pad: string;
}

export const appAt = (url: string, make: string): Subject => ({
  address: `${url}#/k/${make}`,
  shows: '.knitting-row strong',
  reads: '.row-card',
  pad: '.pad',
});

export const bareAt = (url: string): Subject => ({
  address: url,
  shows: 'output',
  reads: 'output',
  pad: 'button',
});

/** CSS px in the window. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A thumb does not leave the glass as it comes there, ms (common practice, no published source). */
const ON_GLASS_MS = 70;

/** One tap, with a finger that lies on the glass for a moment, as fingers do. */
export async function tapAt({ page, cdp }: Slowed, { x, y }: Point): Promise<void> {
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  await page.waitForTimeout(ON_GLASS_MS);
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

export interface Slowed {
  readonly page: Page;
  readonly cdp: CDPSession;
}

/** A new window whose processor is `rate` times slower. */
export async function openSlowed(context: BrowserContext, rate: number): Promise<Slowed> {
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  if (rate !== 1) await cdp.send('Emulation.setCPUThrottlingRate', { rate });
  return { page, cdp };
}

/** Waits until the page says how far it is. */
export async function shown(page: Page, { shows }: Subject): Promise<void> {
  await page.locator(shows).filter({ hasText: /\d/ }).waitFor();
}

/** Middle of what is tapped, low enough that a shaping word above does not move it away. */
export async function thumbOn(page: Page, { pad }: Subject): Promise<Point> {
  const box = await page.locator(pad).first().boundingBox();
  if (box === null) throw new Error(`There is no ${pad} to tap.`);
  return { x: box.x + box.width / 2, y: box.y + box.height - Math.min(24, box.height / 2) };
}
