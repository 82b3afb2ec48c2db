import type { Editor } from '../../app/drafts/editor/editor.ts';
import { askedOf, leaveMends, standingEdited, takeMend } from '../../app/drafts/editor/mending.ts';
import type { PieceId } from '../../progress/log.ts';
import { Mends, Taken } from '../mends/mends.tsx';

/** The garment before the changes typed so far and with them; nothing where it is new. */
export function askedHere(editor: Editor, inHand?: PieceId) {
  const view = standingEdited.value;
  return { view, asked: view && askedOf(editor, view, inHand) };
}

/** What the changes typed so far break in the making up, with what mends it; nothing where the garment is new. */
export function MendsHere({ editor, inHand }: { readonly editor: Editor; readonly inHand?: PieceId }) {
  const { view, asked } = askedHere(editor, inHand);
  const { mends = [] } = editor.history.now;
  if (!view || !asked) return null;
  return (
    <>
      <Mends asked={asked} onTake={(edits) => takeMend(edits, view)} />
      {mends.length > 0 && <Taken edits={mends} garment={asked.after} onLeave={leaveMends} />}
    </>
  );
}
