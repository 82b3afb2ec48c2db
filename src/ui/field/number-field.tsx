import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { Icon } from '../icon/icon.tsx';
import { Field, type FieldWords } from './field.tsx';
import { type Bounds, isWithin, readNumber, stepped } from './read-number.ts';

export interface NumberFieldProps extends FieldWords, Bounds {
  readonly value: number | undefined;
  /** said after the number: 'sts', 'cm' */
  readonly unit?: string | undefined;
  /** how a number stands in it; with two digits behind the mark at most unless said */
  readonly says?: ((value: number) => string) | undefined;
  /** fractions may be typed; whole numbers otherwise */
  readonly decimals?: boolean | undefined;
  /** a minus may be typed */
  readonly signed?: boolean | undefined;
  /** said where she has left no number in it, or one out of its bounds: what is needed */
  readonly needs?: string | undefined;
  /** without the two stepping buttons */
  readonly bare?: boolean | undefined;
  /** at each keystroke that leaves a number, and at each step; undefined when the field is emptied or holds no number */
  readonly onChange: (value: number | undefined) => void;
}

export function NumberField(props: NumberFieldProps) {
  const { label, hint, value, unit, decimals = false, signed = false, bare = false, onChange } = props;
  const { says = saysPlain, needs } = props;
  const shown = value === undefined ? '' : says(value);
  const [typed, setTyped] = useState(shown);
  const own = useRef<number | undefined>(value);
  const [isTouched, setTouched] = useState(false);
  // What she types stays as typed; only a value set from elsewhere replaces it. With the drawing, not after the next
  // frame: by then another key may have come, and would be taken back.
  const spoken = useRef(speech.value);
  useLayoutEffect(() => {
    // another language has another decimal mark, another unit another number
    if (value !== own.current || spoken.current !== speech.value) setTyped(shown);
    own.current = value;
    spoken.current = speech.value;
  }, [value, shown]);

  const error = props.error ?? (isTouched && !isWithin(value, props) ? needs : undefined);
  const take = (text: string) => {
    setTyped(text);
    setTouched(true);
    const number = readNumber(text, signed);
    own.current = number !== undefined && !decimals ? Math.round(number) : number;
    onChange(own.current);
  };
  const step = (direction: 1 | -1) => {
    const next = stepped(value, direction, props);
    own.current = next;
    setTyped(says(next));
    onChange(next);
  };
  return (
    <Field label={label} hint={hint} error={error}>
      {(ties) => (
        <div class="number-row">
          {!bare && <Stepper icon="minus" name={say('ui.less', { label })} onPress={() => step(-1)} />}
          <input
            {...ties}
            class="field-input number-input"
            type="text"
            inputMode={signed ? 'text' : decimals ? 'decimal' : 'numeric'}
            autocomplete="off"
            value={typed}
            onInput={(event) => take(event.currentTarget.value)}
            onBlur={() => value !== undefined && setTyped(shown)}
            onKeyDown={(event) => {
              if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
              event.preventDefault();
              step(event.key === 'ArrowUp' ? 1 : -1);
            }}
          />
          {unit && <span class="number-unit">{unit}</span>}
          {!bare && <Stepper icon="plus" name={say('ui.more', { label })} onPress={() => step(1)} />}
        </div>
      )}
    </Field>
  );
}

const saysPlain = (value: number): string => saysNumber(value, { plain: true });

interface StepperProps {
  readonly icon: 'plus' | 'minus';
  readonly name: string;
  readonly onPress: () => void;
}

/** Out of the tab order: the arrow keys in the input do the same. */
function Stepper({ icon, name, onPress }: StepperProps) {
  return (
    <button class="number-step" type="button" tabIndex={-1} aria-label={name} onClick={onPress}>
      <Icon name={icon} />
    </button>
  );
}
