import { expect, it } from 'vitest';
import { roleOf } from '../../../src/knit/making-up/role.ts';

it.each([
  [
    'neckband',
    [
      'Neckband',
      'NECK BAND',
      'Back neck band',
      'Collar',
      'Front collar',
      'Halsblende',
      'Kragen',
      'Neck edging',
      'Neck border',
    ],
  ],
  ['front band', ['Front band', 'front bands', 'Button band', 'Button bands', 'Knopfleiste']],
  [
    'armhole band',
    [
      'Armhole band',
      'ARMHOLE BANDS',
      'armholeband',
      'Armbands',
      'Armhole edging',
      'Arm borders',
      'Armblende',
    ],
  ],
  ['sleeve', ['Sleeve', 'left sleeve', 'Sleeves, front half', 'Ärmel', 'LINKER ÄRMEL']],
  ['left front', ['Left front', 'LEFT FRONT', 'linkes Vorderteil']],
  ['right front', ['Right front', 'Upper right front', 'Rechtes vorderteil']],
  ['front', ['Front', 'FRONT', 'Vorderteil', 'unteres vorderteil']],
  ['back', ['Back', 'lower back', 'Rückenteil', 'RÜCKEN']],
  ['other', ['Pocket', 'Hood', 'Neck warmer', 'Band', 'Schal']],
] as const)('is %s by what knitters call it in English and German', (role, names) => {
  expect(names.map((name) => roleOf({ name }))).toEqual(names.map(() => role));
});

it('is what the recipe states, whatever its name', () => {
  expect(roleOf({ name: 'Sleeve', role: 'back' })).toBe('back');
});
