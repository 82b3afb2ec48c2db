import { useEffect } from 'preact/hooks';
import { openMake } from '../../app/intents/knit.ts';
import { goInstead } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import { readFault } from '../../app/state.ts';
import { hrefToMake } from '../links.ts';
import { Opening } from './opening.tsx';

/** Goes on to the row in hand; where nothing was ever begun, to the workbasket. */
export default function ContinueScreen() {
  useEffect(() => {
    void openMake().then((make) => {
      if (make !== undefined) goInstead(hrefToMake(make));
      else if (readFault.value === undefined) goInstead(hrefTo('workbasket'));
    });
  }, []);
  return <Opening />;
}
