import type { PageTurns } from './page-keys.ts';

/**
 * Next and previous of a headset or a car's wheel. Most platforms send them only to a page that plays sound,
 * so it works where the platform allows and harms nowhere.
 */
export function onHeadset(turns: PageTurns, title: string): () => void {
  if (!('mediaSession' in navigator)) return () => undefined;
  const session = navigator.mediaSession;
  session.metadata = new MediaMetadata({ title });
  const set = (action: MediaSessionAction, turn: (() => void) | null): void => {
    try {
      session.setActionHandler(action, turn);
    } catch {
      // an action that this browser does not know
    }
  };
  set('nexttrack', turns.forward);
  set('previoustrack', turns.back);
  return () => {
    set('nexttrack', null);
    set('previoustrack', null);
    session.metadata = null;
  };
}
