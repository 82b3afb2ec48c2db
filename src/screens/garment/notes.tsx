import { useEffect, useRef, useState } from 'preact/hooks';
import { changeGarment } from '../../app/garments/change-garment.ts';
import { uniteNotes } from '../../app/garments/unite-notes.ts';
import type { GarmentId } from '../../progress/log.ts';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';

/** What she is typing, and what stood there when she began. */
interface Typing {
  readonly began: string;
  readonly text: string;
}

/** Her own words; kept when she leaves the field or the page. Until she types they are what is stored, also by another window. */
export function Notes({ garment, notes }: { readonly garment: GarmentId; readonly notes: string }) {
  const [typing, setTyping] = useState<Typing>();
  const [kept, setKept] = useState<boolean>();
  const keep = async (typed: Typing | undefined) => {
    if (typed === undefined || typed.text === typed.began) return;
    const { began, text } = typed;
    const isKept = await changeGarment(garment, (now) => ({
      ...now,
      notes: uniteNotes(began, text, now.notes ?? ''),
    }));
    setKept(isKept);
    // typed on meanwhile: that goes on from what is kept now
    if (isKept)
      setTyping((now) => (now === undefined || now.text === text ? undefined : { ...now, began: text }));
  };
  useWhenLeft(() => void keep(typing));
  const input = (text: string) => {
    setTyping((now) => ({ began: now?.began ?? notes, text }));
    setKept(undefined);
  };
  return (
    <section class="notes">
      <TextField
        label={say('garment.notes')}
        hint={say('garment.notesHint')}
        error={kept === false ? say('garment.notesLost') : undefined}
        value={typing?.text ?? notes}
        lines={4}
        maxLength={10_000}
        onInput={input}
        onChange={(text) => void keep({ began: typing?.began ?? notes, text })}
      />
      <p class="garment-small" role="status">
        {kept ? say('garment.notesKept') : ''}
      </p>
    </section>
  );
}

/** The phone may end a page that is out of sight without another word. */
function useWhenLeft(act: () => void): void {
  const latest = useRef(act);
  latest.current = act;
  useEffect(() => {
    const left = () => document.visibilityState === 'hidden' && latest.current();
    document.addEventListener('visibilitychange', left);
    return () => document.removeEventListener('visibilitychange', left);
  }, []);
}
