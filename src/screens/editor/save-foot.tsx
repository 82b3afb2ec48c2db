import { useEffect, useState } from 'preact/hooks';
import { checkOf } from '../../app/drafts/editor/check-of.ts';
import { type Editor, garmentFaults, keeping } from '../../app/drafts/editor/editor.ts';
import type { PieceEntry } from '../../app/drafts/editor/garment-form.ts';
import { openStanding } from '../../app/drafts/editor/mending.ts';
import { nothingElsewhere } from '../../app/drafts/editor/onto-stored.ts';
import { saveGarment } from '../../app/drafts/editor/save-garment.ts';
import { goInstead } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { saysInTurn } from '../../words/in-turn.ts';
import { say } from '../../words/say.ts';
import { brokenBy, showBroken } from '../mends/mends.tsx';
import { savedWithout } from './draft-notice.tsx';
import { FaultButton } from './fault-list.tsx';
import { askedHere } from './mends-here.tsx';
import { showBlanks } from './says-here.ts';

/** Where what she typed is, and the button that makes it ready to knit. */
export function SaveFoot({
  editor,
  piece,
}: {
  readonly editor: Editor;
  readonly piece: PieceEntry | undefined;
}) {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | undefined>(undefined);
  const { garment, old, history } = editor;
  const { pieces } = history.now;
  const wrong = pieces.filter(({ form }) => checkOf(form).faults.length > 0).length;
  const ready = pieces.length - wrong;
  const missing = garmentFaults.value.length;
  useEffect(() => setTrouble(undefined), [history.now]);
  // here once for all that is asked of it: band, page and foot
  useEffect(() => {
    if (old) void openStanding(garment);
  }, [garment, old, piece?.id]);
  const save = async () => {
    showBlanks.value = true;
    if (missing > 0 || ready === 0) {
      setTrouble(say(missing === 0 && pieces.length === 0 ? 'editor.needPiece' : 'editor.needMending'));
      return;
    }
    setBusy(true);
    const saved = await saveGarment();
    setBusy(false);
    if (!saved.ok) {
      const reason = saved.faults[0] ? saysFault(saved.faults[0]) : '';
      setTrouble(say('editor.saveFailed', { reason }));
      return;
    }
    showBlanks.value = false;
    const { garment, waiting, elsewhere = nothingElsewhere, lost = [] } = saved.value;
    const isTold = waiting.length + lost.length > 0 || elsewhere !== nothingElsewhere;
    savedWithout.value = isTold ? { garment, names: waiting, elsewhere, lost } : undefined;
    goInstead(hrefTo(isTold ? 'editGarment' : 'garment', { garment }));
  };
  const faults = piece ? checkOf(piece.form).faults : [];
  return (
    <section class="edit-foot-stack" aria-label={say('editor.save')}>
      <Shows what="edit-foot" />
      {keeping.value === 'failed' && (
        <Notice kind="warning" live>
          {say('editor.draftFailed')}
        </Notice>
      )}
      {trouble && (
        <Notice kind="warning" live>
          {trouble}
        </Notice>
      )}
      {!piece && (
        <p class="edit-kept">{say(keeping.value === 'kept' ? 'editor.draftKept' : 'editor.draftKeeping')}</p>
      )}
      <div class="edit-foot">
        {piece && (
          <div class="edit-works-out">
            {faults.length > 0 ? (
              <FaultButton piece={piece.id} form={piece.form} faults={faults} />
            ) : (
              <WorksOut editor={editor} piece={piece} />
            )}
            <span>{say(keeping.value === 'kept' ? 'editor.keptShort' : 'editor.draftKeeping')}</span>
          </div>
        )}
        <Button kind="main" busy={busy} onPress={() => void save()}>
          {say(wrong > 0 && ready > 0 ? 'editor.saveReady' : 'editor.save')}
        </Button>
      </div>
    </section>
  );
}

/** That every row of the piece was worked out, from what it begins with to what it leaves; or how much of what it is sewn to no longer matches. */
function WorksOut({ editor, piece }: { readonly editor: Editor; readonly piece: PieceEntry }) {
  const { asked } = askedHere(editor, piece.id);
  const broken = asked ? brokenBy(asked) : 0;
  if (broken > 0)
    return (
      <Button icon="warning" onPress={showBroken}>
        {say('mends.places', { count: broken })}
      </Button>
    );
  const { counts } = checkOf(piece.form);
  const { parts } = piece.form;
  const begun = counts.filter((_, i) => parts[i]?.start.kind !== 'split');
  const ends = counts.filter((_, i) => parts[i]?.end !== 'split');
  const sum = (list: readonly (number | undefined)[]) => list.join(' + ');
  return (
    <p>
      {say('editor.worksOut')}
      <strong>
        {saysInTurn([sum(begun.map(({ start }) => start)), sum(ends.map(({ left }) => left))])}
        <Icon name="check" size="s" />
      </strong>
    </p>
  );
}
