import './choice.css';
import { useId } from 'preact/hooks';
import { Icon, type IconName } from '../icon/icon.tsx';

export interface ChoiceOption<T extends string> {
  readonly value: T;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly icon?: IconName | undefined;
  /** of the label, where it is not the app's own language */
  readonly lang?: string | undefined;
}

export interface ChoiceProps<T extends string> {
  readonly label: string;
  /** the label is read aloud but not shown */
  readonly labelHidden?: boolean | undefined;
  readonly hint?: string | undefined;
  /** undefined while nothing is chosen */
  readonly value: T | undefined;
  readonly options: readonly ChoiceOption<T>[];
  /** one under the other, for long labels or hints */
  readonly stacked?: boolean | undefined;
  /** what is left stands left, whichever way is read */
  readonly asItLies?: boolean | undefined;
  readonly onChange: (value: T) => void;
}

/** Up to five options that stand open; radio buttons underneath, so that keys and readers know them. */
export function Choice<T extends string>(props: ChoiceProps<T>) {
  const { label, labelHidden, hint, value, options, stacked, asItLies, onChange } = props;
  const id = useId();
  return (
    <fieldset class="choice" aria-describedby={hint ? `${id}-hint` : undefined}>
      <legend class={labelHidden ? 'spoken' : 'choice-legend'}>{label}</legend>
      {hint && (
        <p class="choice-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div class={stacked ? 'choice-stack' : `choice-row${asItLies ? ' choice-as-it-lies' : ''}`}>
        {options.map((option) => (
          <label class="choice-option" key={option.value}>
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            {option.icon && <Icon name={option.icon} />}
            <span class="choice-words" lang={option.lang}>
              {option.label}
              {option.hint && <small>{option.hint}</small>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
