import './toast.css';
import { useEffect, useRef } from 'preact/hooks';
import { say } from '../../words/say.ts';
import { Button } from '../button/button.tsx';
import { IconButton } from '../button/icon-button.tsx';

export interface ToastProps {
  /** what has happened; undefined: nothing is shown (leave the Toast in the page, so that readers hear it fill) */
  readonly text: string | undefined;
  /** the word for taking it back, and what takes it back */
  readonly undo?: { readonly label: string; readonly onPress: () => void } | undefined;
  /** how long it stays, ms; never while a finger or the focus rests on it; 0: until it is closed */
  readonly stayMs?: number | undefined;
  readonly onGone: () => void;
}

export function Toast({ text, undo, stayMs = 10_000, onGone }: ToastProps) {
  const resting = useRef(false);
  const gone = useRef(onGone);
  gone.current = onGone;
  useEffect(() => {
    if (text === undefined || stayMs === 0) return;
    const timer = setInterval(() => !resting.current && gone.current(), stayMs);
    return () => clearInterval(timer);
  }, [text, stayMs]);
  const rests = (on: boolean) => () => {
    resting.current = on;
  };
  return (
    <div class="toast-place" role="status" aria-live="polite" aria-atomic="true">
      {text !== undefined && (
        <div
          class="toast"
          onPointerEnter={rests(true)}
          onPointerLeave={rests(false)}
          onFocusIn={rests(true)}
          onFocusOut={rests(false)}
        >
          <p>{text}</p>
          {undo && (
            <Button icon="undo" onPress={undo.onPress}>
              {undo.label}
            </Button>
          )}
          <IconButton icon="cross" label={say('ui.close')} onPress={onGone} />
        </div>
      )}
    </div>
  );
}
