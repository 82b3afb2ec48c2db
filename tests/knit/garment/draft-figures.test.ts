import { expect, it } from 'vitest';
import { finishedBeside } from '../../../src/knit/garment/finished-beside.ts';
import { type DesignName, designs } from './designs.ts';
import { drafted, even, matchSaid, roundingSaid, tenth } from './spelled.ts';

interface Figures {
  readonly roundings: readonly string[];
  readonly seams: readonly string[];
  /** when it is made up: each seam takes a stitch of either edge */
  readonly finished: readonly string[];
}

/* Reckoned by hand from the even figures of `spelled.ts`; lengths of curves are held as they are. */
const all: Partial<Readonly<Record<DesignName, Figures>>> = {
  'set in': {
    roundings: [
      'Back width at the underarm: 400 asked, 80 stitches of 5 make 400',
      'Back width across the shoulders: 340 asked, 68 stitches of 5 make 340',
      'Back neck width: 160 asked, 32 stitches of 5 make 160',
      'Back hem height: 40 asked, 10 rows of 4 make 40',
      'Back length: 560 asked, 140 rows of 4 make 560',
      'Back armhole depth: 200 asked, 50 rows of 4 make 200',
      'Back shoulder drop: 24 asked, 6 rows of 4 make 24',
      'Front neck depth: 80 asked, 20 rows of 4 make 80',
      'Back back neck depth: 24 asked, 6 rows of 4 make 24',
      'Sleeve cuff width: 200 asked, 40 stitches of 5 make 200',
      'Sleeve cuff height: 40 asked, 10 rows of 4 make 40',
      'Sleeve sleeve width: 300 asked, 60 stitches of 5 make 300',
      'Sleeve sleeve length: 420 asked, 106 rows of 4 make 424',
    ],
    seams: [
      'side: Front 84, Back 84 rows, 0 off of 0',
      'shoulder: Front 18, Back 18 stitches, 0 off of 0',
      'armhole: Sleeve 205.4, Back 201.8 mm, 3.6 off of 9',
      'underarm: Sleeve 3, Back 3 stitches, 0 off of 0',
    ],
    finished: [
      'chest: 800 asked, 780',
      'length: 560 asked, 564',
      'upper arm: 300 asked, 290',
      'wrist: 200 asked, 144',
      'neck: 560 asked, 376',
    ],
  },
  drop: {
    roundings: [
      'Back width at the underarm: 400 asked, 80 stitches of 5 make 400',
      'Back neck width: 160 asked, 32 stitches of 5 make 160',
      'Back hem height: 40 asked, 10 rows of 4 make 40',
      'Back length: 560 asked, 140 rows of 4 make 560',
      'Back armhole depth: 200 asked, 50 rows of 4 make 200',
      'Front neck depth: 80 asked, 20 rows of 4 make 80',
      'Back back neck depth: 24 asked, 6 rows of 4 make 24',
      'Sleeve cuff width: 200 asked, 40 stitches of 5 make 200',
      'Sleeve cuff height: 40 asked, 10 rows of 4 make 40',
      'Sleeve sleeve width: 400 asked, 80 stitches of 5 make 400',
      'Sleeve sleeve length: 500 asked, 126 rows of 4 make 504',
    ],
    seams: [
      'side: Front 90, Back 90 rows, 0 off of 0',
      'shoulder: Front 24, Back 24 stitches, 0 off of 0',
      'armhole: Sleeve 400, Back 400 mm, 0 off of 5',
    ],
    finished: [
      'chest: 800 asked, 780',
      'length: 560 asked, 560',
      'nape to cuff: 700 asked, 699',
      'upper arm: 400 asked, 390',
      'wrist: 200 asked, 144',
      'neck: 560 asked, 376',
    ],
  },
  indented: {
    roundings: [
      'Back width at the underarm: 400 asked, 80 stitches of 5 make 400',
      'Back width above the hem: 440 asked, 88 stitches of 5 make 440',
      'Back width across the shoulders: 332 asked, 66 stitches of 5 make 330',
      'Back neck width: 160 asked, 32 stitches of 5 make 160',
      'Back hem height: 40 asked, 10 rows of 4 make 40',
      'Back length: 560 asked, 140 rows of 4 make 560',
      'Back armhole depth: 200 asked, 50 rows of 4 make 200',
      'Back shoulder drop: 24 asked, 6 rows of 4 make 24',
      'Front neck depth: 80 asked, 20 rows of 4 make 80',
      'Back back neck depth: 24 asked, 6 rows of 4 make 24',
      'Sleeve cuff width: 200 asked, 40 stitches of 5 make 200',
      'Sleeve cuff height: 40 asked, 10 rows of 4 make 40',
      'Sleeve sleeve width: 400 asked, 80 stitches of 5 make 400',
      'Sleeve sleeve length: 500 asked, 126 rows of 4 make 504',
    ],
    seams: [
      'side: Front 84, Back 84 rows, 0 off of 0',
      'shoulder: Front 17, Back 17 stitches, 0 off of 0',
      'armhole: Sleeve 400, Back 400 mm, 0 off of 5',
      'underarm: Sleeve 32, Back 35 mm, -3 off of 8',
    ],
    finished: [
      'chest: 800 asked, 780',
      'length: 560 asked, 564',
      'nape to cuff: 700 asked, 696',
      'upper arm: 400 asked, 390',
      'wrist: 200 asked, 144',
      'neck: 560 asked, 376',
    ],
  },
  raglan: {
    roundings: [
      'Back width at the underarm: 400 asked, 80 stitches of 5 make 400',
      'Back width above the hem: 440 asked, 88 stitches of 5 make 440',
      'Back width at the waist: 320 asked, 64 stitches of 5 make 320',
      'Back neck width: 160 asked, 32 stitches of 5 make 160',
      'Back hem height: 40 asked, 10 rows of 4 make 40',
      'Back length: 560 asked, 140 rows of 4 make 560',
      'Back raglan depth: 224 asked, 56 rows of 4 make 224',
      'Front neck depth: 80 asked, 20 rows of 4 make 80',
      'Sleeve cuff width: 200 asked, 40 stitches of 5 make 200',
      'Sleeve cuff height: 40 asked, 10 rows of 4 make 40',
      'Sleeve sleeve width: 300 asked, 60 stitches of 5 make 300',
      'Sleeve sleeve length: 420 asked, 106 rows of 4 make 424',
    ],
    seams: [
      'side: Front 84, Back 84 rows, 0 off of 0',
      'raglan: Sleeve 56, Back 56 rows, 0 off of 0',
      'underarm: Sleeve 6, Back 6 stitches, 0 off of 0',
    ],
    finished: [
      'chest: 800 asked, 780',
      'length: 560 asked, 560',
      'upper arm: 300 asked, 290',
      'wrist: 200 asked, 144',
      'neck: 560 asked, 376',
    ],
  },
  cardigan: {
    roundings: [
      'Back width at the underarm: 400 asked, 80 stitches of 5 make 400',
      'Back width across the shoulders: 340 asked, 68 stitches of 5 make 340',
      'Back neck width: 160 asked, 32 stitches of 5 make 160',
      'Back hem height: 40 asked, 10 rows of 4 make 40',
      'Back length: 560 asked, 140 rows of 4 make 560',
      'Back armhole depth: 200 asked, 50 rows of 4 make 200',
      'Back shoulder drop: 24 asked, 6 rows of 4 make 24',
      'Front neck depth: 80 asked, 20 rows of 4 make 80',
      'Back back neck depth: 24 asked, 6 rows of 4 make 24',
      'Front front width at the underarm: 190 asked, 38 stitches of 5 make 190',
      'Sleeve cuff width: 200 asked, 40 stitches of 5 make 200',
      'Sleeve cuff height: 40 asked, 10 rows of 4 make 40',
      'Sleeve sleeve width: 300 asked, 60 stitches of 5 make 300',
      'Sleeve sleeve length: 420 asked, 106 rows of 4 make 424',
    ],
    seams: [
      'side: Front 84, Back 84 rows, 0 off of 0',
      'shoulder: Front 18, Back 18 stitches, 0 off of 0',
      'armhole: Sleeve 205.4, Back 201.8 mm, 3.6 off of 9',
      'underarm: Sleeve 3, Back 3 stitches, 0 off of 0',
    ],
    finished: [
      'chest: 800 asked, 780',
      'length: 560 asked, 564',
      'upper arm: 300 asked, 290',
      'wrist: 200 asked, 144',
    ],
  },
  vest: {
    roundings: [
      'Back width at the underarm: 400 asked, 80 stitches of 5 make 400',
      'Back width across the shoulders: 340 asked, 68 stitches of 5 make 340',
      'Back neck width: 160 asked, 32 stitches of 5 make 160',
      'Back hem height: 40 asked, 10 rows of 4 make 40',
      'Back length: 560 asked, 140 rows of 4 make 560',
      'Back armhole depth: 200 asked, 50 rows of 4 make 200',
      'Back shoulder drop: 24 asked, 6 rows of 4 make 24',
    ],
    seams: ['side: Front 84, Back 84 rows, 0 off of 0', 'shoulder: Front 18, Back 18 stitches, 0 off of 0'],
    finished: ['chest: 800 asked, 780', 'length: 560 asked, 560', 'neck: 560 asked, 264'],
  },
  'from the top down': {
    roundings: [
      'Back width at the underarm: 400 asked, 80 stitches of 5 make 400',
      'Back width across the shoulders: 340 asked, 68 stitches of 5 make 340',
      'Back neck width: 160 asked, 32 stitches of 5 make 160',
      'Back hem height: 40 asked, 10 rows of 4 make 40',
      'Back length: 560 asked, 140 rows of 4 make 560',
      'Back armhole depth: 200 asked, 50 rows of 4 make 200',
      'Back shoulder drop: 24 asked, 6 rows of 4 make 24',
      'Front neck depth: 80 asked, 20 rows of 4 make 80',
      'Back back neck depth: 24 asked, 6 rows of 4 make 24',
      'Sleeve cuff height: 40 asked, 10 rows of 4 make 40',
      'Sleeve sleeve width: 300 asked, 60 stitches of 5 make 300',
      'Sleeve sleeve length: 420 asked, 106 rows of 4 make 424',
    ],
    seams: [
      'side: Front 84, Back 84 rows, 0 off of 0',
      'shoulder: Front 18, Back 18 stitches, 0 off of 0',
      'armhole: Sleeve 205.4, Back 201.8 mm, 3.6 off of 9',
      'underarm: Sleeve 3, Back 3 stitches, 0 off of 0',
    ],
    finished: [
      'chest: 800 asked, 780',
      'length: 560 asked, 560',
      'upper arm: 300 asked, 290',
      'wrist: 200 asked, 144',
      'neck: 560 asked, 376',
    ],
  },
  'without borders': {
    roundings: [
      'Back width at the underarm: 400 asked, 80 stitches of 5 make 400',
      'Back width across the shoulders: 340 asked, 68 stitches of 5 make 340',
      'Back neck width: 160 asked, 32 stitches of 5 make 160',
      'Back length: 560 asked, 140 rows of 4 make 560',
      'Back armhole depth: 200 asked, 50 rows of 4 make 200',
      'Back shoulder drop: 24 asked, 6 rows of 4 make 24',
      'Front neck depth: 80 asked, 20 rows of 4 make 80',
      'Back back neck depth: 24 asked, 6 rows of 4 make 24',
      'Sleeve sleeve width: 300 asked, 60 stitches of 5 make 300',
      'Sleeve sleeve length: 400 asked, 100 rows of 4 make 400',
    ],
    seams: [
      'side: Front 84, Back 84 rows, 0 off of 0',
      'shoulder: Front 18, Back 18 stitches, 0 off of 0',
      'armhole: Sleeve 205.4, Back 201.8 mm, 3.6 off of 9',
      'underarm: Sleeve 3, Back 3 stitches, 0 off of 0',
    ],
    finished: [
      'chest: 800 asked, 780',
      'length: 560 asked, 564',
      'upper arm: 300 asked, 290',
      'wrist: 200 asked, 290',
      'neck: 560 asked, 464.9',
    ],
  },
};

it.each(Object.entries(all))('the figures of a draft: %s', (name, { roundings, seams, finished }) => {
  const changes = designs[name as DesignName];
  const made = drafted(changes);
  expect(made.roundings.map(roundingSaid)).toEqual(roundings);
  expect(made.matches.map(matchSaid)).toEqual(seams);
  const measured = finishedBeside({ ...even, ...changes }, made);
  expect(
    measured.map(({ measure, askedMm, madeMm }) => `${measure}: ${tenth(askedMm)} asked, ${tenth(madeMm)}`),
  ).toEqual(finished);
});
