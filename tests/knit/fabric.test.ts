import { describe, expect, it } from 'vitest';
import {
  assumedGauge,
  type FabricName,
  fabricNames,
  fabrics,
  fits,
  fitsSeamed,
} from '../../src/knit/fabric.ts';
import { factsOf, sameCloth } from '../../src/knit/fabric-facts.ts';
import { fault, placed } from '../../src/knit/fault.ts';
import { heightOf, widthOf } from '../../src/knit/gauge.ts';
import { fabricOfGauge } from '../../src/knit/measured-gauge.ts';

/* Faces are what the names mean; ratios, stretch and pick-up are common practice, no published source. */
describe('a fabric', () => {
  it.each<[FabricName, face: string, of: number, plus: string, ratio: string]>([
    ['garter', 'k p', 1, '0', '0.95 1.4'],
    ['stocking', 'k', 1, '0', '1 1'],
    ['reverse stocking', 'p', 1, '0', '1 1'],
    ['rib 1x1', 'kp', 2, '0', '1.15 1'],
    ['rib 1x1 matched', 'kp', 2, '1', '1.15 1'],
    ['rib 2x2', 'kkpp', 4, '0 2 sewn 2', '1.15 1'],
    ['moss', 'kp pk', 1, '0', '0.95 1.25'],
  ])('%s shows %s, over a multiple of %i plus %s', (name, face, of, plus, ratio) => {
    const { rows, multiple, seamed, ratio: shares } = fabrics[name];
    expect(rows.join(' ')).toBe(face);
    expect(multiple.of).toBe(of);
    expect(`${multiple.plus.join(' ')}${seamed ? ` sewn ${seamed.join(' ')}` : ''}`).toBe(plus);
    expect(`${shares.stitches} ${shares.rows}`).toBe(ratio);
  });

  it.each<[FabricName, cloth: FabricName, facts: string]>([
    ['garter', 'garter', 'ridges, 1 of 2, stretches 1.2'],
    ['stocking', 'stocking', 'stretches 1.2, plain'],
    ['reverse stocking', 'stocking', 'stretches 1.2, plain'],
    ['rib 1x1', 'rib 1x1', 'stretches 1.35, draws in, bound off in rib'],
    ['rib 1x1 matched', 'rib 1x1', 'stretches 1.35, draws in, bound off in rib'],
    ['rib 2x2', 'rib 2x2', 'stretches 1.4, draws in, bound off in rib'],
    ['moss', 'moss', 'stretches 1.15, bound off in pattern'],
  ])('%s is the cloth of %s: %s', (name, cloth, facts) => {
    const { ridges, pickUp, stretch, drawsIn, boundOff, isPlain } = factsOf(name);
    const said = [
      ridges && 'ridges',
      pickUp && `${pickUp.stitches} of ${pickUp.rows}`,
      `stretches ${stretch}`,
      drawsIn && 'draws in',
      boundOff && `bound off${boundOff}`,
      isPlain && 'plain',
    ];
    expect(said.filter(Boolean).join(', ')).toBe(facts);
    expect(factsOf(name).cloth).toBe(cloth);
    for (const other of fabricNames) expect(sameCloth(name, other)).toBe(factsOf(other).cloth === cloth);
  });

  it.each<[FabricName, number, boolean, number, number]>([
    ['rib 2x2', 12, true, 12, 12],
    ['rib 2x2', 14, true, 14, 14],
    ['rib 2x2', 13, false, 12, 14],
    ['rib 2x2', 15, false, 14, 16],
    ['rib 2x2', 1, false, 0, 2],
    ['rib 1x1', 7, false, 6, 8],
    ['rib 1x1 matched', 7, true, 7, 7],
    ['rib 1x1 matched', 8, false, 7, 9],
    ['rib 1x1 matched', 0, false, 0, 1],
    ['garter', 1, true, 1, 1],
  ])('%s over %i stitches: %s, %i below and %i above', (name, count, does, below, above) => {
    expect(fits(name, count)).toEqual({ fits: does, below, above });
  });

  it('is worked over two more than a multiple of four where a 2x2 rib is sewn together', () => {
    expect(fitsSeamed('rib 2x2', 12)).toEqual({ fits: false, below: 10, above: 14 });
    expect(fitsSeamed('rib 2x2', 14)).toEqual({ fits: true, below: 14, above: 14 });
    expect(fitsSeamed('rib 1x1 matched', 12)).toEqual({ fits: false, below: 11, above: 13 });
  });

  it('takes its gauge from another’s by the ratio of both to stocking stitch', () => {
    const known = { stitches: 20, rows: 28 };
    expect(assumedGauge('rib 2x2', known)).toEqual({ stitches: 23, rows: 28 });
    expect(assumedGauge('garter', known)).toEqual({ stitches: 19, rows: expect.closeTo(39.2) });
    expect(assumedGauge('stocking', { stitches: 19, rows: 42 }, 'garter')).toEqual({
      stitches: expect.closeTo(20),
      rows: expect.closeTo(30),
    });
    expect(assumedGauge('garter', known, 'garter')).toEqual(known);
    expect(fabricOfGauge(known)).toBe('stocking');
    expect(fabricOfGauge({ ...known, fabric: 'moss' })).toBe('moss');
  });

  it('is so many mm wide and high', () => {
    const gauge = { stitches: 20, rows: 25 };
    expect([widthOf(30, gauge), heightOf(30, gauge)]).toEqual([150, 120]);
  });
});

describe('a fault', () => {
  it('has no figures and no place unless they are given, and keeps its own place before an outer one', () => {
    expect(fault('bad count')).toEqual({ code: 'bad count', at: {}, figures: {} });
    const inner = fault('bad count', {}, { row: 3 });
    expect(placed(inner, { part: 'Back', row: 9 }).at).toEqual({ part: 'Back', row: 3 });
  });
});
