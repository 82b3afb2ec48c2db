import { hrefTo } from '../../app/routes.ts';
import type { Fault } from '../../knit/fault.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';

/** No such make, or the store could not be read. */
export function NothingHere({ fault }: { readonly fault: Fault | undefined }) {
  const title = say('notices.noSuchMake');
  useArrival(title);
  return (
    <Screen
      title={fault ? 'Ridgeline' : title}
      back={{ href: hrefTo('workbasket'), label: say('knitting.toWorkbasket') }}
    >
      <Notice kind={fault ? 'fault' : 'note'} live>
        {fault ? saysFault(fault) : say('notices.noSuchMakeHelp')}
      </Notice>
      <Button kind="main" href={hrefTo('workbasket')}>
        {say('knitting.toWorkbasket')}
      </Button>
    </Screen>
  );
}
