import type { CourseFaults } from '../../../src/knit/faults/course-faults.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { type ReworkWish, rework } from '../../../src/knit/piece/rework.ts';
import { ripBack } from '../../../src/knit/piece/rip-back.ts';
import { togetherOrder } from '../../../src/knit/piece/together.ts';
import { told } from '../../told.ts';
import type { Drivers } from './drivers.ts';

const recipeOf = (name: string): Recipe => {
  const found = sampleGarment.pieces.find((one) => one.name === name);
  if (!found) throw new Error(`the sample has no ${name}`);
  return found;
};
const partOf = (name: string, index = 0): PlannedPart => {
  const planned = plan(recipeOf(name));
  if (!planned.ok) throw new Error(told(planned.faults));
  return planned.value.parts[index] as PlannedPart;
};
const sleeve = (worked: number, wish: ReworkWish) =>
  rework(recipeOf('Sleeve'), 0, partOf('Sleeve'), worked, wish);
const front = (worked: number, wish: ReworkWish) =>
  rework(recipeOf('Front'), 0, partOf('Front'), worked, wish);

export const courseDrivers: Drivers<keyof CourseFaults> = {
  'nothing left': () => sleeve(138, { kind: 'rows', section: 1, rows: 120 }),
  'shaping to come does not fit': () => sleeve(60, { kind: 'rows', section: 1, rows: 60 }),
  'too few rows for its shaping': () =>
    rework(recipeOf('Back'), 0, partOf('Back'), 110, { kind: 'rows', section: 2, rows: 1 }),
  'no stretch ends there': () => sleeve(60, { kind: 'height', section: 1, heightMm: -40 }),
  'too few rows before the neck': () => front(100, { kind: 'neck', rows: 400 }),
  'fewer rows than knitted': () => sleeve(60, { kind: 'rows', section: 1, rows: 40 }),
  'cannot be taken up': () => sleeve(137, { kind: 'accept', stitches: 3 }),
  'measure again': () => sleeve(60, { kind: 'measured', heightMm: 16, above: 18 }),
  'no neck ahead': () => sleeve(60, { kind: 'neck', rows: 4 }),
  'row outside': () => ripBack(partOf('Sleeve'), 60, { to: 999 }),
  'nothing to rip': () => ripBack(partOf('Sleeve'), 60, { to: 60 }),
  'no lifeline': () => ripBack(partOf('Sleeve'), 60, { lifelines: [60, 70] }),
  'no firm ground': () => ripBack(partOf('Sleeve'), 60, { firmGround: undefined }),
  'all done': () => togetherOrder([{ part: partOf('Sleeve'), rows: partOf('Sleeve').rows.length }]),
  'not level': () =>
    togetherOrder([
      { part: partOf('Sleeve'), rows: 24 },
      { part: partOf('Sleeve'), rows: 20 },
    ]),
  'sides differ': () =>
    togetherOrder([
      { part: partOf('Front', 1), rows: 0 },
      { part: partOf('Neckband'), rows: 0 },
    ]),
};
