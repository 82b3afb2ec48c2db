import { useEffect } from 'preact/hooks';
import { Button } from '../ui/button/button.tsx';
import { Notice } from '../ui/notice/notice.tsx';
import { Screen, type ScreenProps } from '../ui/screen/screen.tsx';
import { loadWords, say } from '../words/say.ts';

interface NotFetchedProps extends Pick<ScreenProps, 'title' | 'back'> {
  /** fetches it once more; false where it cannot be had now either */
  readonly again: () => Promise<boolean>;
}

/** In the place of a page of which a part cannot be had: a first visit was cut off. */
export function NotFetched({ title, back, again }: NotFetchedProps) {
  useEffect(() => void loadWords('workbasket').catch(() => undefined), []);
  return (
    <Screen title={title} back={back}>
      <Notice kind="fault" live>
        {say('workbasket.screenFailedHelp')}
      </Notice>
      <Button kind="main" onPress={() => void tryAgain(again)}>
        {say('workbasket.reload')}
      </Button>
    </Screen>
  );
}

/**
 * The page is loaded anew only where there is a network: without one, on a first visit, the browser would put a page of its
 * own in the place of the app. (Some browsers ask for a file that failed no more until then.)
 */
async function tryAgain(again: NotFetchedProps['again']): Promise<void> {
  if (!(await again()) && navigator.onLine) location.reload();
}
