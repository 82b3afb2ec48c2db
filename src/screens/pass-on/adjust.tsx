import { useId, useState } from 'preact/hooks';
import type { DraftedSize } from '../../app/garments/in-sizes.ts';
import { bodiesOf, type SizeSet } from '../../app/garments/size-set.ts';
import {
  type AdjustablePath,
  type Adjustment,
  adjustablePaths,
  figureAt,
} from '../../knit/garment/adjust.ts';
import type { Design } from '../../knit/garment/design.ts';
import { resized } from '../../knit/garment/grade.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { lengthToType, lengthTyped, lengthUnit, saysLength, saysTyped } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { saysFigure } from './says-figure.ts';

/** All sizes, in the choice of one. */
const ALL = '';

interface Props {
  readonly set: SizeSet;
  readonly drafted: readonly DraftedSize[];
  readonly design: Design;
  readonly onChange: (adjusted: readonly Adjustment[]) => void;
}

/** A figure set otherwise for one size or for all, and those that are, to give back. */
export function Adjust({ set, drafted, design, onChange }: Props) {
  const [path, setPath] = useState<AdjustablePath>('lengthMm');
  const [size, setSize] = useState(ALL);
  const [mm, setMm] = useState<number>();
  const bySize = (name: string): Design => {
    const body = bodiesOf(set).find((one) => one.size === name)?.body;
    return body ? resized(design, body) : design;
  };
  const isSame = (one: Adjustment, other: Adjustment): boolean =>
    one.path === other.path && one.size === other.size;
  const headId = useId();
  const giveBack = (one: Adjustment) => {
    onChange(without(one));
    // its key goes with it: a keyboard and a reader go on from here
    document.getElementById(headId)?.focus({ preventScroll: true });
  };
  const without = (one: Adjustment) => set.adjusted.filter((other) => !isSame(one, other));
  const put = () => {
    if (mm === undefined) return;
    const one: Adjustment = { path, mm, ...(size === ALL ? {} : { size }) };
    onChange([...without(one), one]);
  };
  return (
    <div class="no-print">
      <Card label={say('passOn.adjust')}>
        <h2 id={headId} tabIndex={-1}>
          {say('passOn.adjust')}
        </h2>
        <SelectField
          label={say('passOn.figure')}
          value={path}
          options={adjustablePaths.map((value) => ({ value, label: saysFigure(value) }))}
          onChange={setPath}
        />
        <SelectField
          label={say('draft.size')}
          value={size}
          options={[
            { value: ALL, label: say('passOn.allSizes') },
            ...drafted.map((one) => ({ value: one.size, label: one.size })),
          ]}
          onChange={setSize}
        />
        <NumberField
          label={say('passOn.newFigure')}
          value={mm === undefined ? undefined : lengthToType(mm)}
          unit={lengthUnit()}
          says={saysTyped}
          decimals
          signed={path.startsWith('ease.')}
          onChange={(typed) => setMm(typed === undefined ? undefined : lengthTyped(typed))}
        />
        <Button disabled={mm === undefined} onPress={put}>
          {say('passOn.setFigure')}
        </Button>
        <ul role="list">
          {set.adjusted.map((one) => (
            <li key={`${one.path} ${one.size}`}>
              <strong>{one.size ?? say('passOn.allSizes')}</strong>: {saysFigure(one.path)}{' '}
              {saysLength(one.mm)}
              {one.size !== undefined && ` ${saysRule(figureAt(bySize(one.size), one.path))}`}{' '}
              <Button kind="quiet" onPress={() => giveBack(one)}>
                {say('passOn.giveBack', {
                  figure: saysFigure(one.path),
                  size: one.size ?? say('passOn.allSizes'),
                })}
              </Button>
            </li>
          ))}
        </ul>
      </Card>
    </div>
  );
}

const saysRule = (mm: number | undefined): string =>
  mm === undefined ? '' : say('passOn.byRule', { length: saysLength(mm) });
