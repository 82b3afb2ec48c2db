import { describe, expect, it } from 'vitest';
import { type HandSeam, jointOf } from '../../../src/knit/making-up/joint.ts';
import { handSeamCalled, holdsInAnyGauge } from '../../../src/knit/making-up/joint-called.ts';
import { joined, makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { Trouble } from '../../../src/knit/making-up/work-making-up.ts';
import { groups, part, piece, section, standing } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';

/* A stitch is 4 mm wide, a row 3 mm high. Two strips that no role tells what to do with. */
const strip = (name: string, rows: number) =>
  piece(name, 'other', [part(name, 10, [section('strip', rows)])]);
const notched = piece('Notched', 'other', [
  part('Notched', 10, [section('below', 6), section('above', 6, ...groups(1, 2))]),
]);
const seam = (id: string, a: HandSeam['a'][number], b: HandSeam['b'][number]): HandSeam => ({
  id,
  a: [a],
  b: [b],
  how: 'mattress',
});
const side = (name: string, edge: 'right' | 'left') => ({ piece: name, make: 1, part: name, edge });

const left = (troubles: readonly Trouble[]) =>
  troubles.flatMap((one) => (one.kind === 'forgotten' ? [`${one.rest.part} ${one.rest.edge}`] : []));

describe('edges that she joins herself', () => {
  it.each([
    ['two ends stitch to stitch', 'top', 'start', 'stitches', [10, 10]],
    ['two sides row to row', 'left', 'right', 'rows', [12, 12]],
    ['an end to a side by their lengths', 'top', 'left', 'mm', [0, 0]],
    ['a side to an end too', 'right', 'start', 'mm', [0, 0]],
  ] as const)('%s', (_, a, b, unit, counts) => {
    const edge = (name: string, at: typeof a | typeof b) => ({ piece: name, make: 1, part: name, edge: at });
    const byHand = [seam('s1', edge('Pocket', a), edge('Flap', b))];
    const made = makingUpOf({ ...standing(strip('Pocket', 12), strip('Flap', 12)), byHand });
    const step = made.steps.find((one) => one.kind === 'join');
    expect(step).toMatchObject({ unit, edges: counts.map((count) => ({ count })) });
  });

  it('are used from then on, and a step tells of them; taken apart they are left over again', () => {
    const two = standing(strip('Pocket', 12), strip('Flap', 12));
    const before = joined(two);
    expect(left(before.troubles)).toHaveLength(8);
    const byHand = [seam('s1', side('Pocket', 'right'), side('Flap', 'left'))];
    const made = makingUpOf({ ...two, byHand });
    expect(left(made.troubles)).toHaveLength(6);
    expect(left(made.troubles)).not.toContain('Pocket right');
    expect(made.steps.map(({ id }) => id)).toEqual(['block Pocket', 'block Flap', 'join s1', 'ends']);
    const [step] = made.steps.filter((one) => one.kind === 'join');
    expect(step).toMatchObject({ unit: 'rows', how: 'mattress', edges: [{ count: 12 }, { count: 12 }] });
    expect(made.joined.get('join s1')).toHaveLength(1);
  });

  it('leave every other step as it was, under its own name', () => {
    const whole = standing(back, front, sleeve, neckband, strip('Pocket', 12), strip('Flap', 12));
    const ids = makingUpOf(whole).steps.map(({ id }) => id);
    const byHand = [seam('s1', side('Pocket', 'right'), side('Flap', 'left'))];
    const now = makingUpOf({ ...whole, byHand }).steps.map(({ id }) => id);
    expect(now.filter((id) => id !== 'join s1')).toEqual(ids);
  });

  it('every rest that is told as a stretch is found again where it is, as long as it is', () => {
    const all = standing(notched, strip('Strip', 12));
    const first = joined(all).troubles.flatMap((one) => (one.kind === 'forgotten' ? [one.rest] : []));
    const rows = { first: 3, last: 8 };
    const used = { ...side('Notched', 'right'), rows };
    const byHand = [seam('s', used, { ...side('Strip', 'left'), rows })];
    const rests = joined({ ...all, byHand }).troubles.flatMap((one) =>
      one.kind === 'forgotten' ? [one.rest] : [],
    );
    // both ends of two edges, instead of two whole ones
    expect(rests).toHaveLength(first.length + 2);
    for (const { stretch, mm, rows: high, stitches } of rests) {
      if (!stretch) throw new Error('no stretch');
      const again = joined({ ...all, byHand: [...byHand, seam('t', stretch, side('Strip', 'right'))] });
      const line = again.worked.at(-1)?.lines[0];
      expect([line?.rows, line?.stitches]).toEqual([high, stitches]);
      expect(line?.mm).toBeCloseTo(mm, 6);
      expect(again.troubles.some(({ kind }) => kind === 'used twice')).toBe(
        stretch.piece === 'Strip' && stretch.edge === 'right',
      );
    }
  });

  it('where an edge is no more, the step says so', () => {
    const byHand = [seam('s', side('Gone', 'right'), side('Strip', 'left'))];
    const made = makingUpOf({ ...standing(strip('Strip', 12)), byHand });
    const step = made.steps.find((one) => one.kind === 'join');
    expect(step?.kind === 'join' && step.edges[0]).toBeUndefined();
    expect(step?.kind === 'join' && step.edges[1]).toMatchObject({ mm: 36 });
  });

  it('go with their pieces’ names, and hold in another gauge where they are whole edges', () => {
    const one = seam('s', side('Pocket', 'right'), { ...side('Flap', 'left'), rows: { first: 1, last: 2 } });
    const called = handSeamCalled(one, (name) => (name === 'Flap' ? 'Lid' : name));
    expect(called.b[0]).toMatchObject({ piece: 'Lid', part: 'Flap' });
    expect(holdsInAnyGauge(one)).toBe(false);
    expect(holdsInAnyGauge({ ...one, b: one.a })).toBe(true);
    expect(jointOf(one)).toMatchObject({ kind: 'seam', of: 'other', byHand: 's' });
  });
});
