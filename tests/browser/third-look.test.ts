import { describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { hiddenAt } from './hidden-at.ts';
import { lookedAt, onItsSide, plain, small } from './looked-at.ts';

const { page, knitter, come, toRow, look, boxes } = lookedAt();

describe('what the words mean, on the smallest phone', () => {
  it('takes the focus itself where it scrolls and holds nothing that does', async () => {
    await toRow(119);
    await come('meaning of the words');
    await look({ ...small, name: 'small and dark', colorScheme: 'dark' });
    const found = await violations(page(), 'look');
    await page().getByRole('button', { name: 'Close', exact: true }).tap();
    expect(found).toEqual([]);
  });
});

describe('a row that is only read', () => {
  it('says which row is in hand beside the key back to it, in the largest letters and on its side too', async () => {
    await toRow(119);
    await knitter().open('#/k/sample/back/0/1?row=40');
    await page().getByText('You are reading row 40').waitFor();
    const found: string[] = [];
    for (const language of ['English', 'Deutsch', 'Français'] as const)
      for (const at of [{ ...plain, text: 200 }, { ...small, text: 200 }, onItsSide, plain, small]) {
        const name = `${language}, ${at.width} × ${at.height}`;
        await look({ ...at, name, language });
        const [[told], [key]] = await Promise.all([
          boxes('.looking-bar > p'),
          boxes('.looking-bar .button-main'),
        ]);
        const said = await page().locator('.looking-bar > p').innerText();
        if (!told || told.bottom > (key?.top ?? 0) || !said.includes('119')) found.push(`${name}: ${said}`);
        if ((await boxes('.looking-keys > *')).some(({ bottom }) => bottom > at.height))
          found.push(`${name}: a key is cut`);
        found.push(...(await hiddenAt(page(), language === 'Deutsch' ? [100, 200] : [100])));
      }
    await look(plain);
    await page().getByRole('button', { name: 'Back to row 119' }).tap();
    expect(found).toEqual([]);
  });
});
