import { useState } from 'preact/hooks';
import { Button } from '../ui/button/button.tsx';
import { Sheet } from '../ui/sheet/sheet.tsx';
import { say } from '../words/say.ts';

export interface StartAgainProps {
  /** whose words ask her */
  readonly words: 'draft' | 'pattern';
  readonly onAgain: () => void;
}

/** Throws away what was typed, after she was asked. */
export function StartAgain({ words, onAgain }: StartAgainProps) {
  const [asking, setAsking] = useState(false);
  const again = () => {
    setAsking(false);
    onAgain();
  };
  return (
    <>
      <Button kind="quiet" icon="trash" onPress={() => setAsking(true)}>
        {say(`${words}.startAgain`)}
      </Button>
      <Sheet
        open={asking}
        title={say(`${words}.startAgainAsk`)}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button wide onPress={() => setAsking(false)}>
              {say(`${words}.keepGoing`)}
            </Button>
            <Button wide kind="danger" icon="trash" onPress={again}>
              {say(`${words}.startAgain`)}
            </Button>
          </>
        }
      >
        <p>{say(`${words}.startAgainText`)}</p>
      </Sheet>
    </>
  );
}
