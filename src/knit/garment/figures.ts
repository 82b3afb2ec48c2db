import { type Fault, fault } from '../fault.ts';
import type { Design } from './design.ts';
import { designGauge } from './gauges.ts';
import { garmentKinds } from './kinds/garments.ts';

/** Beyond these a figure is a slip of the finger, mm: from a doll to a tent. */
const MOST_MM = 5000;
const MOST_PER_100_MM = 200;

/** Every figure of a design that cannot be: not a number, nothing, below nothing, or beyond all measure. */
export function badFigures(design: Design): Fault[] {
  return [...bodyFaults(design), ...shapeFaults(design), ...borderFaults(design), ...gaugeFaults(design)];
}

const bodyFaults = ({ body, ease }: Design): Fault[] => [
  ...Object.entries(body).flatMap(([name, mm]) => positive(mm, `body.${name}`)),
  ...Object.entries(ease).flatMap(([name, mm]) =>
    Number.isFinite(mm) && Math.abs(mm) <= MOST_MM ? [] : [badLength(`ease.${name}`)],
  ),
  ...(['chest', 'waist', 'hip', 'upperArm', 'wrist', 'crossBack', 'armholeDepth'] as const).flatMap((name) =>
    body[name] > 0 && body[name] + ease[name] <= 0
      ? [fault('ease below nothing', { bodyMm: body[name] }, { field: `ease.${name}` })]
      : [],
  ),
];

function shapeFaults({ lengthMm, neck, shoulderDropMm, underarmMm, sleeve }: Design): Fault[] {
  return [
    ...positive(lengthMm, 'lengthMm'),
    ...positive(neck.widthMm, 'neck.widthMm'),
    ...notBelow(neck.depthMm, 'neck.depthMm'),
    ...notBelow(neck.backDepthMm, 'neck.backDepthMm'),
    ...(neck.openingMm === undefined ? [] : notBelow(neck.openingMm, 'neck.openingMm')),
    ...notBelow(shoulderDropMm, 'shoulderDropMm'),
    ...(underarmMm === undefined ? [] : notBelow(underarmMm, 'underarmMm')),
    ...(sleeve.lengthMm === undefined ? [] : positive(sleeve.lengthMm, 'sleeve.lengthMm')),
    ...(sleeve.capTopMm === undefined ? [] : positive(sleeve.capTopMm, 'sleeve.capTopMm')),
    ...(sleeve.capEase >= -20 && sleeve.capEase <= 50
      ? []
      : [fault('bad cap ease', { percent: sleeve.capEase }, { field: 'sleeve.capEase' })]),
  ];
}

function borderFaults(design: Design): Fault[] {
  const { buttons, buttonMm } = design.frontBand;
  const heights = (['hem', 'cuff', 'neckband', 'frontBand', 'armholeBand'] as const).flatMap((name) =>
    notBelow(design[name].heightMm, `${name}.heightMm`),
  );
  if (garmentKinds[design.kind].open && buttonMm !== undefined)
    heights.push(...positive(buttonMm, 'frontBand.buttonMm'));
  if (!garmentKinds[design.kind].open || (Number.isSafeInteger(buttons) && buttons >= 0 && buttons <= 60))
    return heights;
  return [...heights, fault('bad buttons', { buttons }, { field: 'frontBand.buttons' })];
}

function gaugeFaults(design: Design): Fault[] {
  const faults: Fault[] = [];
  for (const fabric of new Set([design.fabric, design.hem.fabric, design.cuff.fabric])) {
    const { stitches, rows } = designGauge(design, fabric).gauge;
    if (!(stitches > 0 && stitches <= MOST_PER_100_MM && rows > 0 && rows <= MOST_PER_100_MM)) {
      faults.push(fault('swatch incomplete', { fabric }, { field: `gauges.${fabric}` }));
    }
  }
  for (const [name, mm] of Object.entries(design.needles)) {
    if (!(mm > 0 && mm <= 50)) faults.push(fault('bad needle', {}, { field: `needles.${name}` }));
  }
  return faults;
}

const positive = (mm: number, field: string): Fault[] => (mm > 0 && mm <= MOST_MM ? [] : [badLength(field)]);
const notBelow = (mm: number, field: string): Fault[] => (mm >= 0 && mm <= MOST_MM ? [] : [badLength(field)]);

const badLength = (field: string): Fault => fault('bad length', { mostMm: MOST_MM }, { field });
