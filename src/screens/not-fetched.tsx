import { useEffect } from 'preact/hooks';
import { Button } from '../ui/button/button.tsx';
import { Notice } from '../ui/notice/notice.tsx';
import { Screen, type ScreenProps } from '../ui/screen/screen.tsx';
import { loadWords, say } from '../words/say.ts';

/** In the place of a page of which a part cannot be had: a first visit was cut off. */
export function NotFetched({ title, back }: Pick<ScreenProps, 'title' | 'back'>) {
  useEffect(() => void loadWords('workbasket').catch(() => undefined), []);
  return (
    <Screen title={title} back={back}>
      <Notice kind="fault" live>
        {say('workbasket.screenFailedHelp')}
      </Notice>
      <Button kind="main" onPress={() => location.reload()}>
        {say('workbasket.reload')}
      </Button>
    </Screen>
  );
}
