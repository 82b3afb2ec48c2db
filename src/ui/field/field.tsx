import './field.css';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { Icon } from '../icon/icon.tsx';

/** What every field says about itself. */
export interface FieldWords {
  readonly label: string;
  /** what is wanted, with an example; stands between label and input, where it is read first */
  readonly hint?: string | undefined;
  /** what is wrong and how to mend it; read with the input */
  readonly error?: string | undefined;
}

/** Goes onto the input itself. */
export interface InputTies {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
}

export interface FieldProps extends FieldWords {
  readonly children: (ties: InputTies) => ComponentChildren;
}

export function Field({ label, hint, error, children }: FieldProps) {
  const id = useId();
  const describedBy = [hint && `${id}-hint`, error && `${id}-error`].filter(Boolean).join(' ');
  return (
    <div class={`field${error ? ' field-wrong' : ''}`}>
      <label class="field-label" for={id}>
        {label}
      </label>
      {hint && (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {children({
        id,
        'aria-describedby': describedBy || undefined,
        'aria-invalid': error ? true : undefined,
      })}
      {error && <FieldError id={`${id}-error`}>{error}</FieldError>}
    </div>
  );
}

export function FieldError({ id, children }: { readonly id: string; readonly children: ComponentChildren }) {
  return (
    <p class="field-error" id={id}>
      <Icon name="warning" size="s" />
      <span>{children}</span>
    </p>
  );
}
