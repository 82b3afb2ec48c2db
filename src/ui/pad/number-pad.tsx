import './number-pad.css';
import { useId } from 'preact/hooks';
import { say } from '../../words/say.ts';
import { Icon } from '../icon/icon.tsx';

export interface NumberPadProps {
  /** what is counted: 'stitches on the needle' */
  readonly label: string;
  readonly value: number | undefined;
  /** digits it takes; 4 unless said */
  readonly digits?: number | undefined;
  /** said after the number: 'sts' */
  readonly unit?: string | undefined;
  /** on the key that ends the entry */
  readonly doneLabel: string;
  readonly onChange: (value: number | undefined) => void;
  readonly onDone: (value: number) => void;
}

/** Keys for a thumb, so that no keyboard covers the needle's row; a real keyboard types into it as well. */
export function NumberPad({ label, value, digits = 4, unit, doneLabel, onChange, onDone }: NumberPadProps) {
  const id = useId();
  const shown = value === undefined ? '' : String(value);
  const add = (digit: number) => {
    const next = `${shown === '0' ? '' : shown}${digit}`;
    if (next.length <= digits) onChange(Number(next));
  };
  const drop = () => onChange(shown.length > 1 ? Number(shown.slice(0, -1)) : undefined);
  const done = () => value !== undefined && onDone(value);
  const keyed = (event: KeyboardEvent) => {
    if (/^\d$/.test(event.key)) add(Number(event.key));
    else if (event.key === 'Backspace') drop();
    else if (event.key === 'Enter' && !(event.target instanceof HTMLButtonElement)) done();
    else return;
    event.preventDefault();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: the legend of a fieldset takes no part in its grid
    <div class="keys" role="group" aria-labelledby={id} onKeyDown={keyed}>
      <p class="keys-label" id={id}>
        {label}
      </p>
      <output class="keys-shown" aria-live="polite">
        {shown || <span class="keys-empty">–</span>}
        {unit && <small> {unit}</small>}
      </output>
      {[1, 2, 3, 4, 5, 6, 7, 8, 9].map((digit) => (
        <button class="key" type="button" key={digit} onClick={() => add(digit)}>
          {digit}
        </button>
      ))}
      <button class="key" type="button" aria-label={say('ui.deleteDigit')} disabled={!shown} onClick={drop}>
        <Icon name="erase" />
      </button>
      <button class="key" type="button" onClick={() => add(0)}>
        0
      </button>
      <button class="key key-done" type="button" disabled={value === undefined} onClick={done}>
        {doneLabel}
      </button>
    </div>
  );
}
