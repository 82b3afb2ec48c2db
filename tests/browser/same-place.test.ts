import { describe, expect, it } from 'vitest';
import { lookedAt, plain } from './looked-at.ts';
import { wear } from './looks.ts';

const { page, settings, toRow, look, boxes } = lookedAt();

describe('the count', () => {
  it.each(['English', 'Deutsch', 'Français'] as const)(
    'is found in the same place on a plain row and on the shaping row after it, and so is what lies below (%s)',
    async (language) => {
      const places = async (row: number) => {
        await wear(page(), settings(), plain);
        await toRow(row);
        await look({ ...plain, name: language, language });
        await page().locator('.ladder').waitFor();
        return (await boxes('.row-count, .ahead')).map(({ top }) => top);
      };
      const onPlain = await places(116);
      expect(onPlain).toHaveLength(2);
      expect(await places(117)).toEqual(onPlain);
    },
  );
});
