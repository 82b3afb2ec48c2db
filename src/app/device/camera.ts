import { scriptUrl } from '../start/script-url.ts';
import address from './code-reader.ts?worker&url';

/** The camera at the back of the device, where there is one; undefined where none may be used. */
export async function openCamera(): Promise<MediaStream | undefined> {
  try {
    return await navigator.mediaDevices.getUserMedia({
      video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 720 } },
    });
  } catch {
    return undefined;
  }
}

export const closeCamera = (stream: MediaStream): void => {
  for (const track of stream.getTracks()) track.stop();
};

/** Reads QR codes in what a camera sees. */
export interface CodeReader {
  /** what the codes say that are in sight now; rejects where it cannot read at all */
  read(video: HTMLVideoElement): Promise<readonly string[]>;
  close(): void;
}

interface Detector {
  detect(image: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
interface DetectorClass {
  new (options: { formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
}

/** The browser's own, where it has one; else ours, whose file is fetched only now: it is not kept for offline use. */
export async function openReader(): Promise<CodeReader> {
  return (await ofBrowser()) ?? ofWorker();
}

async function ofBrowser(): Promise<CodeReader | undefined> {
  const { BarcodeDetector: Own } = window as { BarcodeDetector?: DetectorClass };
  const formats = await Own?.getSupportedFormats().catch((): readonly string[] => []);
  if (Own === undefined || !formats?.includes('qr_code')) return undefined;
  const detector = new Own({ formats: ['qr_code'] });
  return {
    read: async (video) => (await detector.detect(video)).map(({ rawValue }) => rawValue),
    close: () => undefined,
  };
}

/** Pixels on each side that are looked at: more takes longer, fewer blur a code's modules together. */
const SIDE = 640;

function ofWorker(): CodeReader {
  const worker = new Worker(scriptUrl(address), { type: 'module' });
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = SIDE;
  const drawn = canvas.getContext('2d', { willReadFrequently: true });
  const read = (video: HTMLVideoElement) =>
    new Promise<readonly string[]>((resolve, reject) => {
      const { videoWidth: width, videoHeight: height } = video;
      const side = Math.min(width, height);
      drawn?.drawImage(video, (width - side) / 2, (height - side) / 2, side, side, 0, 0, SIDE, SIDE);
      const pixels = drawn?.getImageData(0, 0, SIDE, SIDE).data ?? new Uint8ClampedArray(SIDE * SIDE * 4);
      worker.onmessage = ({ data }: MessageEvent<string | undefined>) => resolve(data ? [data] : []);
      worker.onerror = (event) => {
        event.preventDefault();
        reject(new Error('The reader of codes is not to be had.'));
      };
      worker.postMessage(pixels, [pixels.buffer]);
    });
  return { read, close: () => worker.terminate() };
}
