import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Begun } from '../../app/drafts/kept/begun.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';
import { OtherBegun } from '../record/other-begun.tsx';

interface AnotherSheetProps {
  readonly open: boolean;
  readonly onOpen: () => void;
  readonly onClose: () => void;
  /** where the other one is made */
  readonly screen: 'draft' | 'newGarment' | 'read';
  /** what the key that begins it is called; it rests until there is something to begin from */
  readonly beginLabel: string;
  readonly isReady: boolean;
  /** takes it there, in the place of one that is begun where it shall be replaced */
  readonly begin: (replace: boolean) => Promise<Begun>;
  /** what is asked where another is begun, of what is no design */
  readonly title?: string;
  readonly text?: string;
  readonly children: ComponentChildren;
}

/** Another garment in another size: the key to it, what is asked before it is begun, and what came of it. */
export function AnotherSheet(props: AnotherSheetProps) {
  const { open, onOpen, onClose, screen, begin, title, text } = props;
  const [outcome, setOutcome] = useState<Begun>();
  const take = async (replace: boolean) => {
    const done = await begin(replace);
    if (done === 'taken') goTo(hrefTo(screen));
    else setOutcome(done);
  };
  const isOther = outcome === 'another is begun';
  const close = () => {
    onClose();
    setOutcome(undefined);
  };
  return (
    <>
      <Button icon="plus" onPress={onOpen}>
        {say('garment.anotherSize')}
      </Button>
      <OtherBegun
        open={isOther}
        {...(title !== undefined && { title })}
        {...(text !== undefined && { text })}
        href={hrefTo(screen)}
        onClose={close}
        onReplace={() => void take(true)}
      />
      <Sheet
        open={open && !isOther}
        title={say('garment.anotherSize')}
        onClose={close}
        actions={
          <Button wide kind="main" disabled={!props.isReady} onPress={() => void take(false)}>
            {props.beginLabel}
          </Button>
        }
      >
        {props.children}
        {outcome === 'not kept' && (
          <Notice kind="fault" live>
            {say('record.designNotKept')}
          </Notice>
        )}
      </Sheet>
    </>
  );
}
