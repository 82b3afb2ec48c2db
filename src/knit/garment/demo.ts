import { ok, type Result } from '../fault.ts';
import type { Garment, Yarn } from '../piece/garment.ts';
import type { Body, Design } from './design.ts';
import { draft } from './draft.ts';
import { simpleDesign } from './start.ts';

/** Two more garments of the sample scenario, drafted like anyone's: figures, yarns and names are our own. */
export const demoNames = ['cardigan', 'baby'] as const;

export type DemoName = (typeof demoNames)[number];

/** The neighbour's body, mm. */
const neighbour: Body = {
  chest: 940,
  waist: 800,
  hip: 1000,
  crossBack: 370,
  napeToWrist: 760,
  napeToWaist: 425,
  arm: 440,
  upperArm: 300,
  wrist: 165,
  armholeDepth: 190,
  head: 560,
};

/** Her grandchild at half a year, mm. */
const grandchild: Body = {
  chest: 440,
  waist: 440,
  hip: 450,
  crossBack: 190,
  napeToWrist: 290,
  napeToWaist: 175,
  arm: 165,
  upperArm: 150,
  wrist: 115,
  armholeDepth: 92,
  head: 430,
};

interface Demo {
  readonly name: string;
  readonly design: Design;
  readonly yarn: Yarn;
  readonly notes: string;
}

const cardiganStart = simpleDesign(
  { kind: 'cardigan', armhole: 'set-in', neck: 'V', fit: 'standard' },
  neighbour,
  'stocking',
  { stitches: 24, rows: 33 },
);

const babyStart = simpleDesign(
  { kind: 'cardigan', armhole: 'drop', neck: 'round', fit: 'close' },
  grandchild,
  'stocking',
  { stitches: 26, rows: 36 },
);

const demos: Readonly<Record<DemoName, Demo>> = {
  cardigan: {
    name: 'Orchard cardigan',
    design: { ...cardiganStart, lengthMm: 600, frontBand: { ...cardiganStart.frontBand, buttons: 7 } },
    yarn: {
      name: 'Brackenfold Light',
      fibre: 'lambswool',
      colour: 'quince',
      dyeLot: '21',
      grams: 50,
      metres: 150,
      balls: 12,
    },
    notes: 'Two fronts: the second is the mirror image of the first. Buttonholes in the right band only.',
  },
  baby: {
    name: 'Pebble jacket',
    design: {
      ...babyStart,
      lengthMm: 260,
      hem: { ...babyStart.hem, heightMm: 25 },
      cuff: { ...babyStart.cuff, heightMm: 25 },
      needles: { panels: 3.25, borders: 2.75 },
      frontBand: { ...babyStart.frontBand, buttons: 5 },
    },
    yarn: {
      name: 'Millrace Fine',
      fibre: 'merino wool',
      colour: 'pebble',
      dyeLot: '8',
      grams: 50,
      metres: 180,
      balls: 3,
    },
    notes:
      'For a small child: no cords or ribbons at the neck, no loose trimmings; sew buttons on so that they hold, or use none. Follow your local rules.',
  },
};

/** A demo garment with its recipes. Faults are those of `draft`; a test sees that there are none. */
export function demoGarment(name: DemoName): Result<Garment & { readonly design: Design }> {
  const { name: title, design, yarn, notes } = demos[name];
  const made = draft(design);
  if (!made.ok) return made;
  return ok({
    name: title,
    pieces: made.value.recipes,
    joints: made.value.joints,
    yarns: [yarn],
    notes,
    credits: 'Sample garment, numbers of our own',
    licence: 'CC0-1.0',
    design,
  });
}
