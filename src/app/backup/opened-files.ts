import { takeSharedFile } from './shared-file.ts';

interface LaunchQueue {
  setConsumer(take: (launched: { readonly files?: readonly FileSystemFileHandle[] }) => void): void;
}

/**
 * Files that the system opened the app with (a double click on a backup, or one shared to it); until someone listens,
 * the last one waits.
 */
let waiting: OpenedFile | undefined;
let listener: ((opened: OpenedFile) => void) | undefined;

interface OpenedFile {
  readonly file: File;
  /** another app posted it, or a web page that wants to be taken for one: nobody may have asked for it here */
  readonly handed: boolean;
}

/** Called at the start; `arrived` leads to the screen that listens. */
export function takeOpenedFiles(arrived: () => void): void {
  const queue = (window as { launchQueue?: LaunchQueue }).launchQueue;
  queue?.setConsumer(({ files = [] }) => {
    void files[0]?.getFile().then((file) => handOn({ file, handed: false }, arrived));
  });
  // none, or a device without such a keep: there is nothing to hand on
  takeSharedFile().then(
    (file) => file && handOn({ file, handed: true }, arrived),
    () => undefined,
  );
}

function handOn(opened: OpenedFile, arrived: () => void): void {
  if (listener) listener(opened);
  else waiting = opened;
  arrived();
}

/** Listens for opened files; gives the one that waits. Returns the way to stop. */
export function openedFiles(listen: (opened: OpenedFile) => void): () => void {
  listener = listen;
  if (waiting) listen(waiting);
  waiting = undefined;
  return () => {
    listener = undefined;
  };
}
