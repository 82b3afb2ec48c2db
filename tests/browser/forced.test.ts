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

it('in the colours of the system a shaping row keeps its notches, its hatching and the edges that it shapes', async () => {
  const drawn = async () => {
    const of = (selector: string) =>
      page()
        .locator(selector)
        .evaluate((it) => {
          const { clipPath, backgroundImage, borderLeftStyle, borderRightStyle } = getComputedStyle(it);
          return { clipPath, backgroundImage, edges: `${borderLeftStyle} ${borderRightStyle}` };
        });
    const [pad, card] = [await of('.pad-cloth'), await of('.row-card')];
    return {
      notches: pad.clipPath.match(/50%/g)?.length ?? 0,
      isHatched: pad.backgroundImage.includes('repeating'),
      edges: card.edges,
    };
  };
  await toRow(118);
  await look(forced);
  expect(await drawn()).toEqual({ notches: 1, isHatched: true, edges: 'solid dashed' });
  await toRow(119);
  await look(forced);
  expect(await drawn()).toEqual({ notches: 2, isHatched: true, edges: 'dashed dashed' });
  await toRow(120);
  await look(forced);
  expect(await drawn()).toEqual({ notches: 0, isHatched: false, edges: 'solid solid' });
});

it('in the colours of the system a key that does nothing has no edge', async () => {
  // the second sleeve, of which no row is worked
  await come('sleeve second make');
  await look(forced);
  const edges = await page()
    .locator('.pad-beside button:disabled')
    .evaluateAll((all) => all.map((it) => getComputedStyle(it).borderTopColor));
  // that of the page
  expect(edges).toEqual(['rgb(255, 255, 255)', 'rgb(255, 255, 255)']);
});

it('in the colours of the system the part that is chosen of a piece is filled, and no other is', async () => {
  await come('edit garment', 'edit piece');
  await page().locator('.edit-branch').first().tap();
  await look(forced);
  const [chosen, other] = [
    await worn('.edit-branch[aria-pressed="true"]'),
    await worn('.edit-branch:not([aria-pressed="true"])'),
  ];
  expect(chosen.ground).not.toBe(other.ground);
  expect(chosen.ink).not.toBe(other.ink);
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
