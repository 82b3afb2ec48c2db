import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import type { Body } from '../../../src/knit/garment/design.ts';
import { type Choices, startingDesign } from '../../../src/knit/garment/start.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { englishPictures } from '../../../src/knit/written/picture-words.ts';
import { readMakingUp } from '../../../src/knit/written/read-making-up.ts';
import { draftSize } from '../../../src/knit/written/work-size.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import { given } from '../../store/scenario.ts';

/** What a pattern says of a garment in the words of the trade: common practice, no published source. */

const body = bodyOfSize('women', 'M') as Body;

function written(choices: Partial<Choices>): readonly string[] {
  const all: Choices = { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard', ...choices };
  const begun = startingDesign(all, body, 'stocking', { stitches: 16, rows: 22 });
  return given(writeSizes([given(draftSize('', begun, { name: 'Fen' }))], { units: 'cm' })).split('\n');
}

describe('the first sentence of a pattern', () => {
  it.each<[Partial<Choices>, string]>([
    [{ kind: 'pullover', armhole: 'drop', neck: 'boat' }, 'Pullover with drop shoulders and a boat neck'],
    [{ kind: 'cardigan', armhole: 'raglan', neck: 'V' }, 'Cardigan with raglan armholes and a V neck'],
    [{ kind: 'vest', armhole: 'set-in', neck: 'round' }, 'Vest with set-in armholes and a round neck'],
    [
      { kind: 'buttoned vest', armhole: 'set-in', neck: 'V' },
      'Buttoned vest with set-in armholes and a V neck',
    ],
    [
      { kind: 'pullover', armhole: 'indented', neck: 'square' },
      'Pullover with indented armholes and a square neck',
    ],
  ])('says what it is: %j', (choices, wanted) => {
    const lines = written(choices);
    expect(lines.find((line) => line.includes('neck, knitted flat'))).toBe(
      `${wanted}, knitted flat in pieces and sewn together.`,
    );
  });
});

describe('the measures of a pattern', () => {
  const lines = written({});
  const cm = (name: string): number => {
    const line = lines.find((one) => one.startsWith(`${name}: `));
    return Number(/: ([\d.]+) cm$/.exec(line ?? '')?.[1]);
  };

  it('are each of what it is said to be: a chest as wide as the body and its ease, arms that are narrower', () => {
    expect(cm('Chest')).toBeGreaterThan(body.chest / 10);
    expect(cm('Body, round the chest')).toBeCloseTo(body.chest / 10, 0);
    // from the nape to the wrist, beyond half of the back
    expect(cm('Nape to cuff')).toBeGreaterThan(body.crossBack / 20 + 40);
    expect(cm('Length')).toBeGreaterThan(50);
    expect(cm('Length')).toBeLessThan(cm('Nape to cuff'));
    expect(cm('Upper arm')).toBeGreaterThan(body.upperArm / 10);
    expect(cm('Wrist')).toBeLessThan(cm('Upper arm'));
    expect(cm('Wrist')).toBeGreaterThan(body.wrist / 10);
    expect(cm('Neck, round its edge')).toBeGreaterThan(cm('Upper arm'));
    expect(cm('Neck, round its edge')).toBeLessThan(cm('Chest'));
  });

  it('say by how much it is meant to be wider than the body: as it is, to the stitch at each side that a seam takes', () => {
    const ease = lines.find((line) => line.startsWith('Ease: '));
    expect(ease).toMatch(/^Ease: [\d.]+ cm wider than the body at the chest$/);
    const is = cm('Chest') - cm('Body, round the chest');
    // two stitches of 16 to 10 cm
    expect(Math.abs(Number(/[\d.]+/.exec(ease ?? '')?.[0]) - is)).toBeLessThan(20 / 16);
  });
});

describe('what stands beside the drawings', () => {
  it.each(Object.entries(englishPictures.seams))('tells ‘%s’ apart by its own word', (name, says) => {
    const own: Readonly<Record<string, RegExp>> = {
      shoulders: /shoulder/i,
      'pick up': /picked up/i,
      close: /closed/i,
      raglan: /raglan/i,
      'set in sleeves': /set in/i,
      'side seams': /side/i,
      'sleeve seams': /sleeve seam/i,
      opening: /opening/i,
      lap: /over each other/i,
      join: /join/i,
    };
    const fits = Object.keys(own).filter((key) => own[key]?.test(says));
    expect(fits).toEqual([name]);
  });

  it.each(Object.entries(englishPictures.measures))('says where ‘%s’ is measured', (name, says) => {
    const own: Readonly<Record<string, RegExp>> = {
      'at its beginning': /^width .*begins/i,
      'at its widest': /^width .*widest/i,
      'in all': /^height in all/i,
      neck: /^width .*neck/i,
      shoulder: /^width .*shoulder/i,
      'neck depth': /^depth .*neck/i,
      top: /^width .*top/i,
    };
    expect(Object.keys(own).filter((key) => own[key]?.test(says))).toEqual([name]);
  });

  it('says of the last section of a panel that it goes to the top', () => {
    expect(englishPictures.section('rib', false)).toBe('Height of the rib');
    expect(englishPictures.section('armholes', true)).toBe('Height of the armholes, to the top');
  });
});

describe('what a pattern says of its pieces', () => {
  const read = (text: string) => readMakingUp(readPattern(text)).told;
  const front = 'Cast on 20 sts.\nRow 1 (RS): knit.\nRow 2 (WS): purl.\nBind off all sts.\n';

  it('is read: of a pair of fronts which one is the first, and of a sleeve that it ends with its cuff', () => {
    const [left] = written({ kind: 'cardigan' }).filter((line) => line.startsWith('FRONT'));
    expect(left).toContain('left front');
    expect(read(`${left}\n${front}`)).toMatchObject({ leftFirst: true });
    expect(read(`FRONT (make 2)\n${front}`)).not.toHaveProperty('leftFirst');
    const begun = startingDesign(
      { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' },
      body,
      'stocking',
      { stitches: 16, rows: 22 },
    );
    const down = { ...begun, sleeve: { ...begun.sleeve, direction: 'top down' as const } };
    const text = (design: typeof begun) => given(writeSizes([given(draftSize('', design, { name: 'Fen' }))]));
    expect(read(text(down))).toMatchObject({ topDown: true });
    expect(read(text(begun))).not.toHaveProperty('topDown');
  });
});
