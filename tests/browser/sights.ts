import type { Page } from 'playwright-core';
import { designOf, newForm } from '../../src/app/drafts/design/form.ts';
import type { ScreenName } from '../../src/app/routes.ts';
import { draft } from '../../src/knit/garment/draft.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { garmentToLink } from '../../src/store/share/link.ts';
import type { Knitter } from './knitter.ts';
import { readsMixed } from './reads-pattern.ts';
import { sightsOfTheBox } from './sights-of-the-box.ts';
import { foldsMade, unfold } from './unfolded.ts';

/** A screen in one of its states, and how it is come to from the sight before. */
export interface Sight {
  /** short enough for a file's name */
  readonly name: string;
  readonly screen: ScreenName;
  readonly come: (page: Page, knitter: Knitter) => Promise<unknown>;
  /** comes to it anew where a change of language took it away */
  readonly again?: (page: Page) => Promise<unknown>;
}

const back = '#/k/sample/back/0/1';
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).tap();
const isTitled = (page: Page, name: string | RegExp) =>
  page.getByRole('heading', { level: 1, name, exact: true }).waitFor();

/** Opens a sheet by its button, after the one that may be open was closed. */
async function sheet(page: Page, button: string): Promise<void> {
  if ((await page.locator('dialog[open]').count()) > 0) await press(page, 'Close');
  await press(page, button);
  await page.locator('dialog[open]').waitFor();
}

export const atRow = async (page: Page, knitter: Knitter, row: number, make = back) => {
  await knitter.open(`${make}?row=${row}`);
  await press(page, `Make row ${row} the next`);
  await knitter.pad.waitFor();
};

const screenSight = (
  name: string,
  screen: ScreenName,
  hash: string,
  isThere: (page: Page) => Promise<unknown>,
): Sight => ({ name, screen, come: (page, knitter) => knitter.open(hash).then(() => isThere(page)) });

const toolSight = (tool: string, title: string): Sight =>
  screenSight(`count ${tool}`, 'count', `${back}/${tool}`, (page) => isTitled(page, title));

const knitting: readonly Sight[] = [
  { name: 'set-up', screen: 'sample', come: (_, knitter) => knitter.openSample() },
  {
    name: 'needle changes',
    screen: 'knitting',
    come: (page, knitter) =>
      atRow(page, knitter, 19).then(() => page.locator('.before-row', { hasText: 'needle' }).waitFor()),
  },
  {
    name: 'wrong side',
    screen: 'knitting',
    come: (page, knitter) =>
      atRow(page, knitter, 118).then(() => page.locator('.lap', { hasText: 'wrong side' }).waitFor()),
  },
  { name: 'shaping row', screen: 'knitting', come: (page, knitter) => atRow(page, knitter, 119) },
  { name: 'go back', screen: 'knitting', come: (page) => sheet(page, 'Go back') },
  { name: 'tools', screen: 'knitting', come: (page) => sheet(page, 'Tools') },
  {
    name: 'meaning of the words',
    screen: 'knitting',
    come: (page) =>
      sheet(page, 'What the words mean').then(() => page.locator('dialog[open] dd').first().waitFor()),
  },
  {
    name: 'lock',
    screen: 'knitting',
    come: async (page) => {
      await press(page, 'Close');
      await press(page, 'Lock');
      await page.getByText('Hold to unlock').waitFor();
    },
  },
  {
    name: 'row only read',
    screen: 'knitting',
    come: async (page, knitter) => {
      // a locked screen is not left by an address
      await page.getByRole('button', { name: 'Hold to unlock' }).press('Enter');
      await knitter.open(`${back}?row=40`);
      await page.getByText('You are reading row 40').waitFor();
    },
  },
  screenSight('row read ahead', 'knitting', `${back}?row=191`, (page) =>
    page.getByText('You are reading row 191').waitFor(),
  ),
];

const counting: readonly Sight[] = [
  toolSight('tools', 'Count and place'),
  toolSight('check', 'Check the count'),
  {
    name: 'count that differs',
    screen: 'count',
    come: async (page) => {
      for (const digit of '105') await page.locator('.key', { hasText: new RegExp(`^${digit}$`) }).tap();
      await press(page, 'Compare');
      await page.getByRole('heading', { name: 'What explains it' }).waitFor();
    },
  },
  toolSight('find', 'Find my place'),
  toolSight('rip', 'Rip back'),
  toolSight('rework', 'Plan the rest anew'),
  {
    name: 'stripes from here',
    screen: 'count',
    come: async (page) => {
      await page.getByText('Other stripes from here', { exact: true }).tap();
      await page.getByRole('button', { name: /^Add a colou?r$/ }).tap();
      await page.getByText(/^Row\s\d+: Colou?r 1$/).waitFor();
    },
  },
  toolSight('notes', 'Notes and lifelines'),
  toolSight('pace', 'Pace and sittings'),
  screenSight('count together', 'count', '#/k/sample/sleeve/0/1/together', async (page) => {
    await isTitled(page, 'Two on one needle');
    // what stands below the title is read after it
    await page.locator('.count-page .button-main').first().waitFor();
  }),
];

const garment: readonly Sight[] = [
  {
    name: 'end of a part',
    screen: 'knitting',
    come: async (page, knitter) => {
      await atRow(page, knitter, 192);
      await knitter.pad.tap();
      await page.getByRole('link', { name: 'Begin Front: Body' }).waitFor();
    },
  },
  {
    name: 'sleeve in work',
    screen: 'knitting',
    come: (page, knitter) => atRow(page, knitter, 62, '#/k/sample/sleeve/0/1'),
  },
  screenSight('sleeve second make', 'knitting', '#/k/sample/sleeve/0/2', (page) =>
    page.locator('.place-map svg').first().waitFor(),
  ),
  screenSight('garment', 'garment', '#/g/sample', (page) =>
    page.getByRole('link', { name: 'Neckband' }).first().waitFor(),
  ),
  {
    name: 'garment unfolded',
    screen: 'garment',
    come: async (page) => {
      for (const fold of await page.locator('.group > summary').all()) await fold.click();
      await page.getByRole('heading', { name: 'Neckband' }).waitFor();
    },
  },
  { name: 'question before deleting', screen: 'garment', come: (page) => sheet(page, 'Delete this garment') },
  screenSight('yarn', 'yarn', '#/g/sample/yarn', (page) => isTitled(page, 'Yarn')),
  {
    name: 'yarn unfolded',
    screen: 'yarn',
    come: async (page) => {
      await unfold(page);
      await page.getByLabel('Rows', { exact: true }).waitFor();
    },
  },
  screenSight('making up', 'makingUp', '#/g/sample/making-up', (page) => isTitled(page, 'Making up')),
  screenSight('record', 'record', '#/g/sample/record', (page) =>
    page.getByRole('heading', { name: /Back/ }).first().waitFor(),
  ),
  screenSight('pass on', 'passOn', '#/g/sample/pass-on', (page) =>
    page.locator('svg[role="img"]').first().waitFor(),
  ),
  screenSight('to my other device', 'passOn', '#/g/sample/pass-on?device', (page) =>
    isTitled(page, 'To my other device'),
  ),
  screenSight('print', 'print', '#/g/sample/print?piece=front', (page) =>
    page.locator('.paper').first().waitFor(),
  ),
];

const drafted = draft(designOf(newForm()));

/** A design as it is passed on, with a note at a row. */
const designed = await garmentToLink({
  name: 'Fen pullover',
  pieces: drafted.ok ? drafted.value.recipes : [],
  design: newForm(),
  rowNotes: [{ piece: 'Back', part: 'Back', row: 1, text: 'loosely' }],
});

/** A garment more lies in the box from then on. */
const passedOn: readonly Sight[] = [
  screenSight('design opened', 'openLink', `#/open/${designed}`, (page) =>
    isTitled(page, 'Fen pullover').then(() => page.getByLabel('Whose measures').waitFor()),
  ),
  {
    name: 'design in another size',
    screen: 'openLink',
    come: async (page) => {
      await page.getByLabel('Whose measures').selectOption('size XL');
      await page.getByRole('row', { name: /^Round the chest/ }).waitFor();
    },
  },
  {
    name: 'in several sizes',
    screen: 'passOn',
    come: async (page, knitter) => {
      await press(page, 'Put it in the workbasket');
      await page.waitForURL(/#\/g\/[^/]+$/);
      await knitter.open(`${new URL(page.url()).hash}/pass-on?sizes`);
      await isTitled(page, 'In several sizes');
    },
  },
  {
    name: 'in several sizes worked out',
    screen: 'passOn',
    come: async (page) => {
      await press(page, 'Work out the sizes');
      await page.locator('.written').waitFor({ timeout: 60_000 });
    },
    again: async (page) => {
      if ((await page.locator('.written').count()) > 0) return;
      await page.locator('.screen-main .button-main').last().tap();
      await page.locator('.written').waitFor({ timeout: 60_000 });
    },
  },
];

const parts = ['back/0/1', 'front/0/1', 'front/1/1', 'front/2/1', 'sleeve/0/1', 'sleeve/0/2', 'neckband/0/1'];

/** Every part of the sample is at its end, whatever row it was at. */
async function knitAll(page: Page, knitter: Knitter): Promise<void> {
  for (const part of parts) {
    const make = `#/k/sample/${part}`;
    await knitter.open(make);
    await knitter.pad.or(page.locator('.part-end')).first().waitFor();
    if (!(await knitter.pad.isVisible())) continue;
    await atRow(page, knitter, (await knitter.row()).of, make);
    await knitter.pad.tap();
    await page.locator('.part-end').waitFor();
  }
}

/** After all that looks at a garment half knitted. */
const sewing: readonly Sight[] = [
  {
    name: 'halfway sewn',
    screen: 'makingUp',
    come: async (page, knitter) => {
      await knitAll(page, knitter);
      await knitter.open('#/g/sample/making-up');
      for (let done = 1; done <= 5; done += 1) {
        await page.locator('.making-do > .button-main').tap();
        await page.locator('.making-card', { hasText: `${done} of ` }).waitFor();
      }
    },
  },
];

const beginnings: readonly Sight[] = [
  screenSight('link opened', 'openLink', `#/open/${await garmentToLink(sampleGarment)}`, (page) =>
    isTitled(page, 'Harbour pullover'),
  ),
  screenSight('one code of several', 'openLink', '#/open/P.2.4.abc.xyz', (page) =>
    page.getByText('Code 2 of 4 is read').waitFor(),
  ),
  screenSight('damaged link', 'openLink', '#/open/nothing', (page) =>
    page.getByRole('alert').or(page.locator('.notice')).first().waitFor(),
  ),
  screenSight('samples', 'samples', '#/samples', (page) => isTitled(page, 'More samples')),
  {
    name: 'another sample',
    screen: 'sampleOf',
    come: (_, knitter) => knitter.open('#/sample/cardigan').then(() => knitter.pad.waitFor()),
  },
  screenSight('draft', 'draft', '#/draft', (page) => page.locator('.draft-end').waitFor()),
  {
    name: 'draft unfolded',
    screen: 'draft',
    come: (page) => foldsMade(page).then(() => unfold(page)),
  },
  {
    name: 'draft that opens',
    screen: 'draft',
    come: async (page) => {
      const opening = page.getByRole('group', { name: 'Opening for the head', exact: true });
      await opening.getByText('On the left shoulder, with buttons', { exact: true }).tap();
      await page.locator('.neck-verdict', { hasText: 'to spare' }).waitFor();
    },
  },
  screenSight('pattern copied', 'read', '#/read', (page) => page.getByRole('textbox').first().waitFor()),
  { name: 'pattern read', screen: 'read', come: (page) => readsMixed(page) },
  screenSight('new garment', 'newGarment', '#/new', (page) => page.locator('#edit-add').waitFor()),
  screenSight('edit garment', 'editGarment', '#/edit/sample', (page) => page.locator('#edit-add').waitFor()),
  {
    name: 'edit piece',
    screen: 'editGarment',
    come: async (page, knitter) => {
      await knitter.open('#/edit/sample?piece=front');
      await page.locator('#edit-part-0').waitFor();
      // from here on it is a draft, with all that can be typed of a sleeve and a neck
      await press(page, 'Front · 1 to make');
      await page.getByRole('textbox', { name: 'Name' }).first().fill('Front of it');
      await press(page, 'Front · 1 to make');
    },
  },
  {
    name: 'edit band',
    screen: 'editGarment',
    come: async (page) => {
      await page.getByRole('button', { name: /^2\. shoulder/ }).tap();
      await page.getByLabel('Stitches, one group after the other').waitFor();
    },
  },
  {
    name: 'edit mirrored part',
    screen: 'editGarment',
    come: async (page) => {
      await page.getByRole('button', { name: /^Right shoulder/ }).tap();
      await page.getByText('The mirror image of Left shoulder').waitFor();
    },
  },
  {
    name: 'edit piece that others go by',
    screen: 'editGarment',
    come: async (page) => {
      const section = page.locator('#edit-section-0-1');
      await section.locator('.edit-fold-button').tap();
      await section.getByLabel('Rows', { exact: true }).fill('90');
      // with a way to mend it, or why there is none: the back may have been knitted by a sight before
      await page.locator('.mends-list li').first().waitFor();
      await page.locator('.mends-looking').waitFor({ state: 'detached' });
    },
  },
  screenSight('workbasket', 'workbasket', '#/', (page) =>
    page.locator('.garment-drawing .thumb').first().waitFor(),
  ),
  {
    name: 'continue',
    screen: 'continue',
    come: (_, knitter) => knitter.open('#/continue').then(() => knitter.pad.waitFor()),
  },
];

/** Every screen and state, each coming from the one before; the phone is new at the first. */
export const sights: readonly Sight[] = [
  screenSight('empty workbasket', 'workbasket', '', (page) =>
    page.getByRole('link', { name: /Open the sample/ }).waitFor(),
  ),
  ...knitting,
  ...counting,
  ...garment,
  ...beginnings,
  screenSight('backup', 'backup', '#/backup', (page) => page.locator('.backup').waitFor()),
  screenSight('settings', 'settings', '#/settings', (page) =>
    page.getByRole('heading', { name: 'While knitting' }).waitFor(),
  ),
  ...sightsOfTheBox,
  screenSight('lost address', 'workbasket', '#/nowhere', (page) =>
    page.getByText('There is no such page').waitFor(),
  ),
  screenSight('no such make', 'knitting', '#/k/none/none/0/1', (page) =>
    page.getByText('There is nothing to knit').waitFor(),
  ),
  ...passedOn,
  ...sewing,
];
