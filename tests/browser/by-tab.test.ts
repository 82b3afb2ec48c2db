import { afterAll, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { openSettings, wear } from './looks.ts';
import { englishIn, ownTexts, textsOf } from './other-tongue.ts';
import { notReached } from './reached.ts';
import { settled } from './settled.ts';
import { sights } from './sights.ts';
import { within } from './until.ts';

afterAll(removeProfiles);

const plain = { name: 'plain', width: 390, height: 844 } as const;
const wide = { name: 'wide', width: 1280, height: 800 } as const;

/** What is in hand most, a sheet over it, a page of figures; all of them with RIDGELINE_LOOKS=all. */
const quick = ['set-up', 'shaping row', 'go back', 'count rework', 'workbasket'];
const isWhole = process.env.RIDGELINE_LOOKS === 'all';
const toWalk = isWhole ? sights : sights.filter(({ name }) => quick.includes(name));
/** To change the language, as two windows do, takes longer than all the rest. */
const isSpoken = (name: string) => isWhole || name === 'shaping row';

it('every control of a screen is reached by Tab in the order of reading, shows the focus and lets it go; in German and in French no sentence is English', async () => {
  const host = await plainHost();
  const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  const { page } = phone;
  const knitter = knitterAt(page, host.url);
  const settings = await openSettings(page, host.url);
  const languages = [
    { language: 'Deutsch', isEnglish: await englishIn('de') },
    { language: 'Français', isEnglish: await englishIn('fr') },
  ] as const;
  const found: string[] = [];
  const tabbed = new Set<string>();
  for (const sight of toWalk) {
    await within(40_000, `coming to ${sight.name}`, sight.come(page, knitter));
    await page.setViewportSize(wide);
    const own = await ownTexts(page);
    const sentences = [...own].filter((one) => one.length > 40);
    for (const { language, isEnglish } of isSpoken(sight.name) ? languages : []) {
      await within(40_000, `${sight.name} in ${language}`, wear(page, settings, { ...wide, language }));
      for (const text of await textsOf(page)) {
        // a whole with her words in it is asked for in its parts, which are texts too
        const isHers = own.has(text.trim()) || sentences.some((one) => text.includes(one));
        const english = isHers ? undefined : isEnglish(text);
        if (english) found.push(`${sight.name}, ${language}: ${english}`);
      }
    }
    // what stands after the first paint comes a few frames later
    await settled(page);
    const wrong = await within(90_000, `${sight.name} by Tab`, notReached(page, tabbed));
    found.push(...wrong.map((what) => `${sight.name}: ${what}`));
    if (isSpoken(sight.name)) await wear(page, settings, plain);
    await page.setViewportSize(plain);
  }
  expect(found).toEqual([]);
  expect(tabbed.size).toBeGreaterThan(isWhole ? 200 : 25);
  await phone.close();
}, 900_000);

it('finds what Tab does not come to, what hides its focus, what holds it, and an English sentence', async () => {
  const host = await plainHost();
  const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  const { page } = phone;
  await page.goto(host.url);
  await page.getByRole('heading', { name: 'Workbasket' }).waitFor();
  await page.evaluate(() => {
    const made = (label: string, tag = 'button') => {
      const one = document.createElement(tag);
      one.textContent = label;
      document.querySelector('main')?.prepend(one);
      return one;
    };
    const turned = document.createElement('div');
    Object.assign(turned.style, { display: 'flex', flexDirection: 'column-reverse' });
    document.querySelector('main')?.prepend(turned);
    turned.append(made('below'), made('above'));
    made('away').tabIndex = -1;
    made('a picture', 'div').setAttribute('role', 'button');
    made('plain').style.outline = '0';
    made('holds').addEventListener('keydown', (event) => event.preventDefault());
  });
  const found = (await notReached(page)).join('\n');
  for (const said of ['“away” is not reached', '“a picture” is not reached', '“holds” holds the focus'])
    expect(found).toContain(said);
  await page.getByText('holds', { exact: true }).evaluate((one) => one.remove());
  const more = (await notReached(page)).join('\n');
  expect(more).toContain('“plain” does not show the focus');
  expect(more).toContain('“above” is above what had the focus before it');

  const isEnglish = await englishIn('de');
  expect((await textsOf(page)).map(isEnglish).filter((one) => one !== undefined)).not.toEqual([]);
  await phone.close();
});
