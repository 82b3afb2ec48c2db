import { forgetMissing } from '../../app/garments/open-garments.ts';
import type { Sentinel } from '../../store/beside/sentinel.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';
import { WaysToBegin } from './ways-to-begin.tsx';

/** The database is empty and this device knows that it was not: she is never greeted as new. */
export function Missing({ known }: { readonly known: Sentinel }) {
  const actions = (
    <Button kind="quiet" onPress={() => void forgetMissing()}>
      {say('workbasket.goOn')}
    </Button>
  );
  const garments = say('workbasket.missingGarments', { count: known.garments });
  return (
    <>
      <Notice kind="fault" title={say('workbasket.missingTitle')} actions={actions} live>
        {say('workbasket.missing', { garments, entries: known.entries })}
      </Notice>
      <WaysToBegin only="backup" />
    </>
  );
}
