import type { ComponentChildren } from 'preact';
import { needleChoices } from '../../words/needle-choices.ts';
import type { FieldWords } from './field.tsx';
import { SelectField } from './select-field.tsx';

interface NeedleFieldProps extends FieldWords {
  readonly mm: number | undefined;
  readonly onChange: (mm: number) => void;
  /** how it is typed where she says needles in millimetres */
  readonly children: ComponentChildren;
}

/** A needle by the number that she knows it by, chosen, since 6 of one system is 4 mm and another's is 5; else typed. */
export function NeedleField({ mm, onChange, children, ...words }: NeedleFieldProps) {
  const options = needleChoices(mm);
  if (options === undefined) return <>{children}</>;
  const choose = (value: string) => value !== '' && onChange(Number(value));
  return (
    <SelectField {...words} value={mm === undefined ? '' : String(mm)} options={options} onChange={choose} />
  );
}
