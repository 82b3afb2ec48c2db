import { expect, it } from 'vitest';
import { lookedAt, plain } from './looked-at.ts';

const { page, come, toRow, look } = lookedAt();

const forced = { ...plain, name: 'forced colours', forcedColors: 'active' } as const;

/** What an element lies on and is written in. */
const worn = (selector: string) =>
  page()
    .locator(selector)
    .first()
    .evaluate((it) => {
      const { backgroundColor, color } = getComputedStyle(it);
      return { ground: backgroundColor, ink: color };
    });

it('in the colours of the system the right side is filled and the wrong side is not', async () => {
  await toRow(118);
  await look(forced);
  const canvas = await worn('body');
  const wrong = await worn('.row-side-WS');
  expect(wrong.ink).toBe(canvas.ink);
  await toRow(119);
  await look(forced);
  const right = await worn('.row-side-RS');
  expect(right.ground).toBe(wrong.ink);
  expect(right.ink).not.toBe(wrong.ink);
});

it('the finder’s left end stands left of its right end', async () => {
  await come('count find');
  const [left, right] = await Promise.all(
    ['the left end', 'the right end'].map((name) => page().getByText(name, { exact: true }).boundingBox()),
  );
  expect(left?.x).toBeLessThan(right?.x ?? 0);
});

it('in the colours of the system a drawn choice that is chosen is filled, and no other is', async () => {
  await come('draft', 'draft unfolded');
  await look(forced);
  const [chosen, other] = [
    await worn('.draft-tile:has(input:checked)'),
    await worn('.draft-tile:not(:has(input:checked))'),
  ];
  expect(chosen.ground).not.toBe(other.ground);
  expect(chosen.ink).not.toBe(other.ink);
});

it('in the colours of the system a warning and a fault are drawn double, and what is well is not', async () => {
  const edge = (selector: string) =>
    page()
      .locator(selector)
      .first()
      .evaluate((it) => getComputedStyle(it).borderInlineStartStyle);
  await come('samples');
  await look(forced);
  expect(await edge('.notice-warning')).toBe('double');
  await come('damaged link');
  await look(forced);
  expect(await edge('.notice-fault')).toBe('double');
  await come('pattern copied', 'pattern read');
  await look(forced);
  expect(await edge('.pattern-line-wrong')).toBe('double');
  expect(await edge('.pattern-line:not(.pattern-line-wrong)')).toBe('solid');
});
