import { describe, expect, it } from 'vitest';
import { hrefTo, makeAt, parseRoute, patterns, type ScreenName } from '../../src/app/routes.ts';

describe('an address', () => {
  it('leads to the screen that it was made for, with what it names', () => {
    for (const screen of Object.keys(patterns) as ScreenName[]) {
      const names = [...patterns[screen].matchAll(/:(\w+)/g)].map(([, name]) => name ?? '');
      const at = Object.fromEntries(names.map((name) => [name, `${name}-1 ü/%?#`]));
      expect(parseRoute(hrefTo(screen, at))).toMatchObject({ screen, at });
    }
  });

  it('stays as it is bookmarked, shared and named by the phone’s own menu', () => {
    expect(Object.entries(patterns).map(([screen, address]) => `${screen} ${address}`)).toEqual([
      'workbasket /',
      'continue /continue',
      'sample /sample',
      'sampleOf /sample/:which',
      'samples /samples',
      'garment /g/:garment',
      'knitting /k/:garment/:piece/:part/:make',
      'count /k/:garment/:piece/:part/:make/:tool',
      'yarn /g/:garment/yarn',
      'makingUp /g/:garment/making-up',
      'passOn /g/:garment/pass-on',
      'record /g/:garment/record',
      'openLink /open/:text',
      'print /g/:garment/print',
      'backup /backup',
      'settings /settings',
      'newGarment /new',
      'editGarment /edit/:garment',
      'draft /draft',
      'read /read',
    ]);
  });

  it('may ask for a row of a make', () => {
    const found = parseRoute('#/k/sample/front/1/1?row=12');
    expect(found).toMatchObject({
      screen: 'knitting',
      at: { garment: 'sample', piece: 'front', part: '1', make: '1' },
    });
    expect(found?.query.get('row')).toBe('12');
  });

  it('is of the make that the store knows by its key, and may itself name nothing', () => {
    const made = (hash: string) => {
      const route = parseRoute(hash);
      return route && makeAt(route);
    };
    expect(made('#/k/sample/front/1/2')).toBe('sample/front/1/2');
    expect(made('#/k/sample/front/0/1/tools')).toBe('sample/front/0/1');
    expect(made('#/g/sample')).toBe('sample//NaN/NaN');
    expect(hrefTo('garment', {})).toBe('#/g/');
    expect(made('#/backup')).toBe('//NaN/NaN');
  });

  it.each(['', '#', '#/'])('that is as good as none leads to the workbasket: %j', (hash) => {
    expect(parseRoute(hash)?.screen).toBe('workbasket');
  });

  it.each(['#/k/sample', '#/nowhere', '#/k/a/b/0/1/more/less', '#/g/%E0%A4%A'])(
    'that no screen has leads nowhere: %s',
    (hash) => {
      expect(parseRoute(hash)).toBeUndefined();
    },
  );
});
