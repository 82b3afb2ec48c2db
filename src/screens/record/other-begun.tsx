import { hrefTo } from '../../app/routes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';

interface OtherBegunProps {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly onReplace: () => void;
}

/** Asked before a design that is begun makes room for another: one is kept in the making. */
export const OtherBegun = ({ open, onClose, onReplace }: OtherBegunProps) => (
  <Sheet
    open={open}
    title={say('record.designAsk')}
    onClose={onClose}
    actions={
      <>
        <Button wide href={hrefTo('draft')}>
          {say('record.designOther')}
        </Button>
        <Button wide kind="danger" onPress={onReplace}>
          {say('record.designReplace')}
        </Button>
      </>
    }
  >
    <p>{say('record.designAskText')}</p>
  </Sheet>
);
