import { useLayoutEffect } from 'preact/hooks';
import { openMake } from '../../app/in-hand/knit.ts';
import { goInstead } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import { readFault } from '../../app/state.ts';
import { NothingHere, useNothingHere } from '../knitting/after-paint.ts';
import { hrefToMake } from '../links.ts';

/** Goes on to the row in hand; where nothing was ever begun, to the workbasket. */
export default function ContinueScreen() {
  useLayoutEffect(() => {
    void openMake().then((make) => {
      if (make !== undefined) goInstead(hrefToMake(make));
      else if (readFault.value === undefined) goInstead(hrefTo('workbasket'));
    });
  }, []);
  const fault = readFault.value;
  useNothingHere(fault !== undefined);
  return fault ? <NothingHere fault={fault} /> : <div class="knitting-waits" />;
}
