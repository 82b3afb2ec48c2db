import { signal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { type Editor, openEditor, throwAway } from '../../app/drafts/editor/editor.ts';
import type { Elsewhere, FieldName } from '../../app/drafts/editor/onto-stored.ts';
import { hrefTo } from '../../app/routes.ts';
import type { LostStripes } from '../../knit/yarn/stripes-again.ts';
import type { GarmentId } from '../../progress/log.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { saysAgo } from '../../words/time.ts';

/** What the last saving had to leave out. */
export const savedWithout = signal<
  | {
      readonly garment: GarmentId;
      readonly names: readonly string[];
      readonly elsewhere: Elsewhere;
      readonly lost: readonly LostStripes[];
    }
  | undefined
>(undefined);

export function SavedNotice() {
  const saved = savedWithout.value;
  if (saved === undefined) return null;
  return (
    <Notice
      kind="done"
      title={say('editor.saved')}
      live
      actions={
        <Button href={hrefTo('garment', { garment: saved.garment })}>{say('editor.openGarment')}</Button>
      }
    >
      {saved.names.length > 0 && <p>{say('editor.waitingPieces', { pieces: saysList(saved.names) })}</p>}
      {saved.lost.map((one) => (
        <p key={`${one.piece} ${one.row}`}>{say('editor.stripesLost', { ...one })}</p>
      ))}
      {saysElsewhere(saved.elsewhere).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </Notice>
  );
}

/** What another window saved of this garment while it is open here. */
export function ElsewhereNotice({ editor }: { readonly editor: Editor }) {
  const sentences = saysElsewhere(editor.elsewhere);
  if (sentences.length === 0) return null;
  return (
    <Notice kind="warning" live>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </Notice>
  );
}

function saysElsewhere({ fields, pieces, both }: Elsewhere): readonly string[] {
  const taken = [...fields.map(saysField), ...pieces];
  return [
    ...(taken.length > 0 ? [say('editor.takenOver', { what: saysList(taken) })] : []),
    ...(both.length > 0 ? [say('editor.bothChanged', { what: saysList(both.map(saysIfField)) })] : []),
  ];
}

const fieldNames: Readonly<Record<FieldName, Parameters<typeof say>[0]>> = {
  name: 'editor.name',
  notes: 'editor.notes',
  yarn: 'editor.yarnName',
  gauge: 'editor.gauge',
  needle: 'editor.fieldNeedle',
};

const saysField = (name: FieldName): string => say(fieldNames[name] as 'editor.name');

/** A field by its word, a piece by the name that she gave it. */
const saysIfField = (what: string): string =>
  Object.hasOwn(fieldNames, what) ? saysField(what as FieldName) : what;

/** A draft was found: it goes on, unless she throws it away, which is asked once more. */
export function DraftNotice({ editor }: { readonly editor: Editor }) {
  const [asking, setAsking] = useState(false);
  if (editor.foundAt === undefined) return null;
  const away = async () => {
    setAsking(false);
    await throwAway();
    await openEditor(editor.old?.id);
  };
  return (
    <>
      <Notice
        kind="note"
        title={say('editor.draftHere')}
        actions={
          <Button kind="quiet" icon="trash" onPress={() => setAsking(true)}>
            {say('editor.startAfresh')}
          </Button>
        }
      >
        {say('editor.draftHereText', { when: saysAgo(editor.foundAt, Date.now()) })}
      </Notice>
      <Sheet
        open={asking}
        title={say('editor.throwAwayTitle')}
        onClose={() => setAsking(false)}
        actions={
          <>
            <Button wide onPress={() => setAsking(false)}>
              {say('editor.keepIt')}
            </Button>
            <Button wide kind="danger" icon="trash" onPress={() => void away()}>
              {say('editor.throwAway')}
            </Button>
          </>
        }
      >
        <p>{say(editor.old ? 'editor.throwAwayEdit' : 'editor.throwAwayNew')}</p>
      </Sheet>
    </>
  );
}
