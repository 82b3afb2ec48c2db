import type { DraftFaults } from '../../../src/knit/faults/draft-faults.ts';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import type { Body, Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { type Choices, startingDesign } from '../../../src/knit/garment/start.ts';
import type { Drivers, Made } from './drivers.ts';

const woman = bodyOfSize('women', 'M') as Body;
type Change = { readonly [Field in keyof Design]?: Partial<Design[Field]> | Design[Field] };

/** A usual garment with some of its figures changed: what keeps it from being drafted, or what to look at. */
function drafted(change: Change, choices: Partial<Choices> = {}): Made {
  const all: Choices = { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard', ...choices };
  const begun = startingDesign(all, woman, 'stocking', { stitches: 22, rows: 30 });
  const usual: Design = { ...begun, seamStitch: false };
  const changed = Object.entries(change).map(([field, value]) => {
    const before = usual[field as keyof Design];
    const whole = typeof value === 'object' && field !== 'gauges';
    return [field, whole && typeof before === 'object' ? { ...before, ...value } : value];
  });
  const made = draft({ ...usual, ...Object.fromEntries(changed) });
  return made.ok ? made.value.warnings : made;
}
const raglan = (change: Change) => drafted(change, { armhole: 'raglan' });
const cardigan = (change: Change) => drafted(change, { kind: 'cardigan' });

export const draftDrivers: Drivers<keyof DraftFaults> = {
  'ease below nothing': () => drafted({ ease: { wrist: -500 } }),
  'bad cap ease': () => drafted({ sleeve: { capEase: 60 } }),
  'bad buttons': () => cardigan({ frontBand: { buttons: 61 } }),
  'swatch incomplete': () => drafted({ gauges: {} }),
  'bad length': () => drafted({ body: { chest: 0 } }),
  'head does not pass': () => drafted({ neck: { widthMm: 90, depthMm: 20, backDepthMm: 0 } }),
  'too few stitches': () => drafted({ body: { chest: 10 }, ease: { chest: 0 } }),
  'no neck': () => drafted({ neck: { widthMm: 1 } }),
  'back wider than chest': () => drafted({ body: { crossBack: 600 } }),
  'armhole too shallow': () => drafted({ body: { armholeDepth: 10 }, ease: { armholeDepth: 0 } }),
  'raglan without sleeves': () => drafted({}, { armhole: 'raglan', kind: 'vest' }),
  'neck too wide': () => drafted({ neck: { widthMm: 420 } }),
  'band wider than neck': () => cardigan({ frontBand: { heightMm: 400 } }),
  'too short': () => drafted({ lengthMm: 200 }),
  'neck too deep': () => drafted({ neck: { depthMm: 630 } }),
  'waist outside the side': () => drafted({ silhouette: 'waist', lengthMm: 450 }),
  'raglan neck too narrow': () => raglan({ neck: { widthMm: 20 } }),
  'raglan neck too wide': () => raglan({ neck: { widthMm: 600 } }),
  'more shapings than rows': () => drafted({ sleeve: { lengthMm: 80 }, ease: { upperArm: 100, wrist: -40 } }),
  'sleeve too short': () => drafted({ sleeve: { lengthMm: 50 } }),
  'cuff too narrow to widen': () => drafted({ sleeve: { shape: 'after cuff' }, ease: { wrist: -100 } }),
  'cap does not fit': () => drafted({ ease: { upperArm: 300 } }),
  'sleeve too narrow': () => raglan({ ease: { upperArm: -250, wrist: -100 } }),
  'unusual ease': () => drafted({ ease: { chest: 320 } }),
  'more shapings than right side rows': () => drafted({ sleeve: { lengthMm: 130 } }),
  'cap out of proportion': () => drafted({ ease: { upperArm: 130 } }),
  'sleeve top narrower than the arm': () => drafted({ body: { upperArm: 480 } }, { armhole: 'drop' }),
  'cuff wider than sleeve': () => drafted({ ease: { wrist: 190 } }),
  'rib multiple': () => drafted({ body: { chest: 927 }, neck: { widthMm: 159 }, hem: { count: 'as body' } }),
  'front neck above back neck': () => drafted({ neck: { depthMm: 20, backDepthMm: 60 } }),
  'narrow at the hip': () => drafted({ body: { hip: 1300 }, lengthMm: 700 }),
  'too many buttons': () => cardigan({ frontBand: { buttons: 40 } }),
  'narrow shoulder': () => drafted({ neck: { widthMm: 392 } }),
};
