import { describe, expect, it } from 'vitest';
import { draftKey } from '../../../../src/app/drafts/editor/draft.ts';
import { draftsIn } from '../../../../src/app/drafts/editor/drafts.ts';
import { blankGarment } from '../../../../src/app/drafts/editor/garment-form.ts';

const draft = (garment: string, at: number) => ({ version: 1, garment, at, form: blankGarment }) as const;

describe('drafts in the settings', () => {
  it('are found among the other settings, the latest first, the new one told apart', () => {
    const settings = {
      language: 'de',
      [draftKey(undefined)]: draft('g2', 5),
      [draftKey('g1')]: draft('g1', 9),
      [draftKey('g3')]: null,
    };
    expect(draftsIn(settings).map(({ garment, isNew }) => [garment, isNew])).toEqual([
      ['g1', false],
      ['g2', true],
    ]);
  });

  it('that tell no moment come last, and none is told of them', () => {
    const at = (moment: unknown) => ({ ...draft('x', 1), at: moment });
    const settings = {
      'draft a': at('5'),
      'draft b': at(3),
      'draft c': at(Number.NaN),
      'draft d': at(Number.POSITIVE_INFINITY),
      'draft e': at(null),
      drafted: at(4),
    };
    expect(draftsIn(settings).map(({ garment, at }) => [garment, at])).toEqual([
      ['b', 3],
      ['a', 0],
      ['c', 0],
      ['d', 0],
      ['e', 0],
    ]);
  });
});
