import { describe, expect, it } from 'vitest';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { seamsBefore } from '../../../src/knit/making-up/seams-before.ts';
import { standing } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';

/** A band is picked up along what is joined already: common practice, no published source. */
describe('what is sewn before a band is picked up', () => {
  const made = makingUpOf(standing(back, front, sleeve, neckband));
  const ids = (band: string, ticked: readonly string[] = []) =>
    seamsBefore(band, made, new Set(ticked)).map(({ id }) => id);

  it('the one shoulder that a neckband runs across; not its own seam, nor sleeves and sides, which come after it', () => {
    expect(ids('Neckband')).toEqual(['shoulders']);
  });

  it('nothing once that is sewn, and whether or not it was blocked', () => {
    expect(ids('Neckband', ['shoulders'])).toEqual([]);
    expect(ids('Neckband', ['block Back', 'block Front'])).toEqual(['shoulders']);
  });

  it('nothing before what is no band', () => {
    expect(ids('Sleeve')).toEqual([]);
  });

  it('nothing before a band that lies along one piece', () => {
    const own = made.joined.get('pick up Neckband') ?? [];
    const alone = own.map(({ joint, lines }) => ({ joint, lines: lines.slice(0, 1) }));
    const joined = new Map([...made.joined, ['pick up Neckband', alone]]);
    expect(seamsBefore('Neckband', { ...made, joined }, new Set())).toEqual([]);
  });
});
