import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { FieldError, type InputTies } from '../../ui/field/field.tsx';
import { Select, type SelectProps } from '../../ui/field/select.tsx';
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
