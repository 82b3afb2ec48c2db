import jsQR from 'jsqr';
import { encode } from 'uqr';

/**
 * A code of 60 mm on a phone's screen, photographed from 200 mm: a camera that sees 65° on 1,080 px has 4.2 px to the
 * millimetre there, so 254 px for the whole code with its margin; the lens and the hand blur each by its neighbours.
 */
const CODE_MM = 60;
const FAR_MM = 200;
/** at that distance */
const PX_PER_MM = 1080 / (2 * FAR_MM * Math.tan((65 / 2 / 180) * Math.PI));

/** How it is held. */
export interface Held {
  /** times that each pixel becomes the mean of those around it */
  readonly blurs: number;
  /** degrees by which the screen leans away from the camera, about an axis up and down it */
  readonly tilt?: number;
  /** degrees by which it is turned */
  readonly turn?: number;
  /** mm from the lens to the screen */
  readonly farMm?: number;
}

interface Picture {
  readonly pixels: Uint8ClampedArray;
  readonly side: number;
}

/** points of a pixel, to and fro, by which its grey is found */
const GRAINS = 4;
/** grey of the screen around the code */
const AROUND = 255;
const MARGIN_PX = 20;

/** Greys of the photograph. */
function photograph(text: string, { blurs, tilt = 0, turn = 0, farMm = FAR_MM }: Held): Picture {
  const { data, size } = encode(text, { ecc: 'L', border: 4 });
  const side =
    Math.round(((CODE_MM * PX_PER_MM * FAR_MM) / farMm) * (turn === 0 && tilt === 0 ? 1 : 1.3)) +
    2 * MARGIN_PX;
  const onScreen = ray(tilt, turn, farMm);
  const light = (u: number, v: number): number => {
    const [x, y] = onScreen(u - side / 2, v - side / 2);
    const [column, row] = [x, y].map((mm) => Math.floor((mm / CODE_MM + 0.5) * size));
    const isDark = data[row ?? -1]?.[column ?? -1];
    return isDark === undefined ? AROUND : isDark ? 0 : 255;
  };
  let grey = new Float64Array(side * side);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1) {
      let sum = 0;
      for (let j = 0; j < GRAINS; j += 1)
        for (let i = 0; i < GRAINS; i += 1) sum += light(x + (i + 0.5) / GRAINS, y + (j + 0.5) / GRAINS);
      grey[y * side + x] = sum / GRAINS ** 2;
    }
  for (let blur = 0; blur < blurs; blur += 1) grey = blurred(grey, side);
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [i, value] of grey.entries()) pixels.fill(value, 4 * i, 4 * i + 3);
  return { pixels, side };
}

/** Where on the screen, mm from the code's middle, what a pixel sees lies, given from the picture's middle: a pinhole camera. */
function ray(
  tilt: number,
  turn: number,
  farMm: number,
): (u: number, v: number) => readonly [x: number, y: number] {
  const focal = FAR_MM * PX_PER_MM;
  const [cosTilt, sinTilt, cosTurn, sinTurn] = [tilt, turn].flatMap((degrees) => {
    const angle = (degrees * Math.PI) / 180;
    return [Math.cos(angle), Math.sin(angle)];
  }) as [number, number, number, number];
  return (u, v) => {
    const far = (farMm * cosTilt) / (cosTilt - (u / focal) * sinTilt);
    const x = (far * u * cosTilt) / focal + (far - farMm) * sinTilt;
    const y = (far * v) / focal;
    return [x * cosTurn + y * sinTurn, y * cosTurn - x * sinTurn];
  };
}

/** Each pixel the mean of the nine around it. */
function blurred(grey: Float64Array<ArrayBuffer>, side: number): Float64Array<ArrayBuffer> {
  const next = new Float64Array(grey);
  for (let y = 1; y < side - 1; y += 1)
    for (let x = 1; x < side - 1; x += 1) {
      let sum = 0;
      for (let j = -1; j <= 1; j += 1)
        for (let i = -1; i <= 1; i += 1) sum += grey[(y + j) * side + x + i] ?? AROUND;
      next[y * side + x] = sum / 9;
    }
  return next;
}

/** Whether a decoder of others, as the app asks it (`src/app/device/code-reader.ts`), reads the photograph of a code. */
export function isRead(text: string, held: Held): boolean {
  const { pixels, side } = photograph(text, held);
  return jsQR(pixels, side, side, { inversionAttempts: 'dontInvert' })?.data === text;
}
