import { hrefTo } from '../../app/routes.ts';
import { readFault } from '../../app/state.ts';
import type { Fault } from '../../knit/fault.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';

/** The moment before something opens, and what is said when it does not. */
export function Opening({ fault }: { readonly fault?: Fault | undefined }) {
  const wrong = fault ?? readFault.value;
  // nobody arrives here but where it fails
  useArrival('', wrong !== undefined);
  return (
    <Screen
      title={say('knitting.opening')}
      back={{ href: hrefTo('workbasket'), label: say('knitting.toWorkbasket') }}
    >
      {wrong && (
        <Notice kind="fault" live>
          {saysFault(wrong)}
        </Notice>
      )}
    </Screen>
  );
}
