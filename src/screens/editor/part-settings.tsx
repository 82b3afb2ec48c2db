import { useState } from 'preact/hooks';
import type { PartForm } from '../../knit/piece/form/form.ts';
import type { Side } from '../../knit/row/step.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { saysSide } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import type { PartHand } from './changes.ts';
import { Fold } from './fold.tsx';

interface PartSettingsProps {
  readonly hand: PartHand;
  readonly part: PartForm;
  /** of row 1 as it comes now */
  readonly side: Side | undefined;
}

/** What most parts leave as it is: the edge stitch, and the side on which row 1 falls. */
export function PartSettings({ hand, part, side }: PartSettingsProps) {
  const [open, setOpen] = useState(false);
  const { selvedge: _selvedge, firstSide: _firstSide, ...bare } = part;
  const auto =
    side === undefined || part.firstSide
      ? say('editor.firstSideAuto', { side: '…' })
      : say('editor.firstSideAuto', { side: saysSide(side) });
  const setSide = (value: Side | 'auto') =>
    hand.replace(
      { ...bare, ...keep(part, 'selvedge'), ...(value === 'auto' ? {} : { firstSide: value }) },
      'firstSide',
    );
  return (
    <Fold head={say('editor.moreSettings')} open={open} onToggle={() => setOpen(!open)}>
      <div class="edit-stack">
        <Toggle
          label={say('editor.slipped')}
          on={part.selvedge === 'slipped'}
          onChange={(on) => hand.type({ selvedge: on ? 'slipped' : 'plain' }, 'selvedge')}
        />
        <Choice
          label={say('editor.firstSide')}
          value={part.firstSide ?? 'auto'}
          options={[
            { value: 'auto', label: auto },
            { value: 'RS', label: saysSide('RS', true) },
            { value: 'WS', label: saysSide('WS', true) },
          ]}
          onChange={setSide}
        />
      </div>
    </Fold>
  );
}

const keep = (part: PartForm, name: 'selvedge'): Pick<PartForm, 'selvedge'> =>
  part[name] === undefined ? {} : { [name]: part[name] };
