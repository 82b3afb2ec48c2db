import { useState } from 'preact/hooks';
import { Button } from '../../../src/ui/button/button.tsx';
import { IconButton } from '../../../src/ui/button/icon-button.tsx';
import { Card } from '../../../src/ui/card/card.tsx';
import { Choice } from '../../../src/ui/choice/choice.tsx';
import { Toggle } from '../../../src/ui/choice/toggle.tsx';
import { NumberField } from '../../../src/ui/field/number-field.tsx';
import { SelectField } from '../../../src/ui/field/select-field.tsx';
import { TextField } from '../../../src/ui/field/text-field.tsx';
import { firstDrawings } from '../../../src/ui/icon/drawings.ts';
import type { IconName } from '../../../src/ui/icon/icon.tsx';
import { Icon } from '../../../src/ui/icon/icon.tsx';
import { moreDrawings } from '../../../src/ui/icon/more-drawings.ts';
import { Notice } from '../../../src/ui/notice/notice.tsx';
import { NumberPad } from '../../../src/ui/pad/number-pad.tsx';
import { Screen } from '../../../src/ui/screen/screen.tsx';
import { Sheet } from '../../../src/ui/sheet/sheet.tsx';

export function PartsPage() {
  const [count, setCount] = useState<number | undefined>(118);
  const [hand, setHand] = useState<'left' | 'right'>('right');
  const [awake, setAwake] = useState(true);
  const [open, setOpen] = useState(false);
  return (
    <Screen
      title="Parts"
      back={{ href: '#back', label: 'Back to nothing' }}
      actions={<IconButton icon="lock" label="Dim" pressed={false} />}
      foot={
        <Button kind="main" wide onPress={() => setOpen(true)}>
          Open sheet
        </Button>
      }
    >
      <div>
        {(Object.keys({ ...firstDrawings, ...moreDrawings }) as IconName[]).map((name) => (
          <Icon key={name} name={name} />
        ))}
      </div>
      <div>
        <Button icon="edit">Plain</Button>
        <Button kind="quiet">Quiet</Button>
        <Button kind="danger">Danger</Button>
        <Button disabled>Off</Button>
        <Button href="#there">Link</Button>
      </div>
      <TextField label="Name" hint="As you call it" value="Harbour pullover" />
      <NumberField
        label="Cast on"
        unit="sts"
        value={count}
        onChange={setCount}
        error={count === 118 ? 'Take 116 or 120 for this rib.' : undefined}
      />
      <NumberField label="Width" unit="cm" decimals value={undefined} onChange={() => {}} />
      <SelectField
        label="Fabric"
        value="garter"
        options={[{ value: 'garter', label: 'garter stitch' }]}
        onChange={() => {}}
      />
      <Choice
        label="Hand"
        value={hand}
        onChange={setHand}
        options={[
          { value: 'left', label: 'Left', hint: 'the thumb of the left hand' },
          { value: 'right', label: 'Right' },
        ]}
      />
      <Toggle label="Keep the screen awake" hint="While you knit" on={awake} onChange={setAwake} />
      {(['plain', 'place', 'shaping', 'resting'] as const).map((tone) => (
        <Card key={tone} tone={tone} label={`Card ${tone}`}>
          {tone}
        </Card>
      ))}
      {(['fault', 'warning', 'note', 'done'] as const).map((kind) => (
        <Notice key={kind} kind={kind} title={kind} actions={<Button>Mend {kind}</Button>}>
          What, where, and how to mend it.
        </Notice>
      ))}
      <Sheet open={open} title="Stitches" onClose={() => setOpen(false)} actions={<Button>Leave</Button>}>
        <NumberPad
          label="Stitches on the needle"
          unit="sts"
          value={count}
          onChange={setCount}
          onDone={() => setOpen(false)}
          doneLabel="Check"
        />
      </Sheet>
    </Screen>
  );
}
