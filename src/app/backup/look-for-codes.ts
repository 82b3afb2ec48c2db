import { type RunCode, readRunCode, textOfRun, withCode } from '../../store/share/code-run.ts';
import { type CodeReader, closeCamera, openCamera, openReader } from '../device/camera.ts';
import { goTo } from '../navigate.ts';

export type LookTrouble = 'no camera' | 'no reader';

/** What is told while the camera looks. */
interface Seen {
  readonly onRun: (run: readonly RunCode[]) => void;
  readonly onRead: (text: string) => void;
  readonly onTrouble: (trouble: LookTrouble) => void;
}

/** Looks, picture by picture, until all is read. Gives the way to stop. */
export function lookForCodes(picture: { readonly current: HTMLVideoElement | null }, seen: Seen): () => void {
  let stopped = false;
  let reader: CodeReader | undefined;
  let stream: MediaStream | undefined;
  const stop = () => {
    stopped = true;
    reader?.close();
    if (stream) closeCamera(stream);
  };
  const work = async () => {
    stream = await openCamera();
    if (stream === undefined) return seen.onTrouble('no camera');
    const shown = picture.current;
    if (stopped || shown === null) return stop();
    shown.srcObject = stream;
    await shown.play();
    reader = await openReader();
    let run: readonly RunCode[] = [];
    while (!stopped) {
      for (const text of await reader.read(shown)) {
        const link = /#\/open\/[\w.-]+/.exec(text)?.[0];
        if (link !== undefined) return goTo(link);
        const code = readRunCode(text);
        const now = code ? withCode(run, code) : run;
        if (now !== run) seen.onRun(now);
        run = now;
      }
      const whole = await textOfRun(run);
      if (whole !== undefined && !stopped) return seen.onRead(whole);
      await new Promise(requestAnimationFrame);
    }
  };
  work()
    .catch(() => stopped || seen.onTrouble('no reader'))
    .finally(stop);
  return stop;
}
