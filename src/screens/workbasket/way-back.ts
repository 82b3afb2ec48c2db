import { useEffect } from 'preact/hooks';
import { readWayBack, wayBack } from '../../app/backup/way-back.ts';
import { loadWords } from '../../words/say.ts';
import { later } from '../later.tsx';

/** The way back from a backup that was taken in. */
export const WayBack = later(
  async () =>
    (await Promise.all([import('../backup/way-back-notice.tsx'), loadWords('backup')]))[0].WayBackNotice,
);

/** Fetched only where there is one. */
export function useWayBack(): void {
  useEffect(() => {
    void readWayBack().then(() => wayBack.value && WayBack.fetch());
  }, []);
}
