import { Field, type FieldWords } from './field.tsx';

export interface TextFieldProps extends FieldWords {
  readonly value: string;
  /** more than one line; the box grows with the text */
  readonly lines?: number | undefined;
  readonly maxLength?: number | undefined;
  readonly autocomplete?: string | undefined;
  readonly placeholder?: string | undefined;
  readonly required?: boolean | undefined;
  readonly name?: string | undefined;
  /** while typing */
  readonly onInput?: ((value: string) => void) | undefined;
  /** when the field is left */
  readonly onChange?: ((value: string) => void) | undefined;
}

export function TextField(props: TextFieldProps) {
  const { label, hint, error, value, lines, maxLength, autocomplete, placeholder, required, name } = props;
  const told = {
    class: 'field-input',
    value,
    maxLength,
    placeholder,
    required,
    name,
    onInput: (event: { currentTarget: { value: string } }) => props.onInput?.(event.currentTarget.value),
    onChange: (event: { currentTarget: { value: string } }) => props.onChange?.(event.currentTarget.value),
  };
  return (
    <Field label={label} hint={hint} error={error}>
      {(ties) =>
        lines ? (
          <textarea {...ties} {...told} rows={lines} style={{ '--lines': lines }} />
        ) : (
          <input {...ties} {...told} type="text" autocomplete={autocomplete ?? 'off'} />
        )
      }
    </Field>
  );
}
