import { hrefTo } from '../../app/routes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';

interface OtherBegunProps {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly onReplace: () => void;
  /** of what is no design: what it is called, what would go, and where the other one is */
  readonly title?: string;
  readonly text?: string;
  readonly href?: string;
}

/** Asked before what is begun makes room for another: one design, garment or text is kept in the making. */
export const OtherBegun = ({
  open,
  onClose,
  onReplace,
  title = say('record.designAsk'),
  text = say('record.designAskText'),
  href = hrefTo('draft'),
}: OtherBegunProps) => (
  <Sheet
    open={open}
    title={title}
    onClose={onClose}
    actions={
      <>
        <Button wide href={href}>
          {say('record.designOther')}
        </Button>
        <Button wide kind="danger" onPress={onReplace}>
          {say('record.designReplace')}
        </Button>
      </>
    }
  >
    <p>{text}</p>
  </Sheet>
);
