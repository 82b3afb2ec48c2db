import { useLayoutEffect, useRef, useState } from 'preact/hooks';
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

interface Typed {
  readonly currentTarget: { readonly value: string };
}

export function TextField(props: TextFieldProps) {
  const { label, hint, error, value, lines, maxLength, autocomplete, placeholder, required, name } = props;
  const [typed, take] = useState(value);
  const given = useRef<string | undefined>(undefined);
  // What she types stays though the page is drawn anew before she leaves the field; only a text set from elsewhere
  // replaces it, and not one of hers that comes back from where it was kept while she types on.
  useLayoutEffect(() => {
    if (value !== given.current) take(value);
    given.current = undefined;
  }, [value]);
  const told = {
    class: 'field-input',
    // what is typed runs as its own language does; an empty field as the page
    dir: typed ? ('auto' as const) : undefined,
    value: typed,
    maxLength,
    placeholder,
    required,
    name,
    onInput: ({ currentTarget }: Typed) => {
      take(currentTarget.value);
      props.onInput?.(currentTarget.value);
    },
    onChange: ({ currentTarget }: Typed) => {
      given.current = currentTarget.value;
      props.onChange?.(currentTarget.value);
    },
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
