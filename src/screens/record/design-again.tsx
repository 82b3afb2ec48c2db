import { useEffect, useState } from 'preact/hooks';
import { designFrom } from '../../app/drafts/design/designer.ts';
import type { DesignForm } from '../../app/drafts/design/form.ts';
import type { Begun } from '../../app/drafts/kept/begun.ts';
import { readKept } from '../../app/drafts/kept/read-kept.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';
import { OtherBegun } from './other-begun.tsx';

/** The way back from a garment to what it was drafted from; nothing for one that came another way. */
export function DesignAgain({ design }: { readonly design: unknown }) {
  const [outcome, setOutcome] = useState<Begun>();
  const [figures, setFigures] = useState<DesignForm>();
  useEffect(() => {
    void readKept('designForm', design).then((read) => setFigures(read.ok ? read.value : undefined));
  }, [design]);
  if (figures === undefined) return null;
  const take = async (replace: boolean) => {
    const done = await designFrom(figures, replace);
    if (done === 'taken') goTo(hrefTo('draft'));
    else setOutcome(done);
  };
  return (
    <div>
      <p>{say('record.designHelp')}</p>
      <Button icon="edit" onPress={() => void take(false)}>
        {say('record.design')}
      </Button>
      {outcome === 'not kept' && (
        <Notice kind="fault" live>
          {say('record.designNotKept')}
        </Notice>
      )}
      <OtherBegun
        open={outcome === 'another is begun'}
        onClose={() => setOutcome(undefined)}
        onReplace={() => void take(true)}
      />
    </div>
  );
}
