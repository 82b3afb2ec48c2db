import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { FieldError, type InputTies } from '../../ui/field/field.tsx';
import { readNumber } from '../../ui/field/read-number.ts';
import { Select, type SelectProps } from '../../ui/field/select.tsx';
import { needleChoices } from '../../words/needle-choices.ts';
import { say } from '../../words/say.ts';
import { shortened } from './typed-number.tsx';

interface SaidProps {
  /** its name for a reader */
  readonly label: string;
  /** the words around it, its own place being '…': 'every … row' */
  readonly said: string;
  readonly error?: string | undefined;
  readonly children: (ties: InputTies & { 'aria-label': string }) => ComponentChildren;
}

/** A field as a word of a sentence: touching the words around it touches it. */
function Said({ label, said, error, children }: SaidProps) {
  const id = useId();
  const [before = '', after = ''] = said.split('…').map((words) => words.trim());
  const wrong = error ? `${id}-error` : undefined;
  return (
    <>
      <label class={error ? 'said field-wrong' : 'said'} for={id}>
        {before && <span>{before}</span>}
        {children({
          id,
          'aria-label': label,
          'aria-describedby': wrong,
          'aria-invalid': error ? true : undefined,
        })}
        {after && <span>{after}</span>}
      </label>
      {wrong && <FieldError id={wrong}>{error}</FieldError>}
    </>
  );
}

interface SaidNumberProps extends Omit<SaidProps, 'children'> {
  /** as it was typed, right or wrong */
  readonly typed: string;
  readonly decimals?: boolean;
  /** words, or more than one number: '4, 3, 2' */
  readonly text?: boolean;
  readonly onTyped: (typed: string) => void;
}

export function SaidNumber({ typed, decimals = false, text = false, onTyped, ...said }: SaidNumberProps) {
  const shown = decimals ? shortened(typed) : typed;
  return (
    <Said {...said}>
      {(ties) => (
        <input
          {...ties}
          class={text ? 'field-input said-input said-text' : 'field-input said-input'}
          type="text"
          inputMode={text ? 'text' : decimals ? 'decimal' : 'numeric'}
          autocomplete="off"
          size={Math.max(text ? 8 : 2, shown.length)}
          value={shown}
          onInput={(event) => onTyped(event.currentTarget.value)}
        />
      )}
    </Said>
  );
}

type SaidChoiceProps<T extends string> = Omit<SaidProps, 'children'> & SelectProps<T>;

export const SaidChoice = <T extends string>({ value, options, onChange, ...said }: SaidChoiceProps<T>) => (
  <Said {...said}>
    {(ties) => <Select {...{ value, options, onChange, ties }} look="said-input said-select" />}
  </Said>
);

interface SaidNeedleProps {
  /** mm, as it was typed */
  readonly typed: string;
  readonly error: string | undefined;
  readonly onTyped: (typed: string) => void;
}

/** A needle within a sentence: typed in millimetres, or chosen where she says needles by their numbers. */
export function SaidNeedle({ typed, error, onTyped }: SaidNeedleProps) {
  const mm = readNumber(typed);
  const options = needleChoices(mm);
  const value = mm === undefined ? '' : String(mm);
  return options === undefined ? (
    <SaidNumber
      label={say('editor.needle')}
      said={say('editor.saidNeedle')}
      error={error}
      typed={typed}
      decimals
      onTyped={onTyped}
    />
  ) : (
    <SaidChoice
      label={say('editor.needleNumber')}
      said={say('editor.saidNeedleNumber')}
      error={error}
      value={value}
      options={options}
      onChange={onTyped}
    />
  );
}
