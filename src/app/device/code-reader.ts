import jsQR from 'jsqr';

/** A worker for browsers that read no codes themselves (`./camera.ts`): a square picture comes in, what it says goes out. */
const { postMessage: answer } = globalThis as unknown as { postMessage(said: string | undefined): void };

addEventListener('message', ({ data }: MessageEvent<Uint8ClampedArray>) => {
  const side = Math.sqrt(data.length / 4);
  answer(jsQR(data, side, side, { inversionAttempts: 'dontInvert' })?.data);
});
