import { useEffect, useMemo } from 'preact/hooks';
import type { Editor } from '../../app/drafts/editor/editor.ts';
import {
  askedOf,
  leaveMends,
  openStanding,
  standingEdited,
  takeMend,
} from '../../app/drafts/editor/mending.ts';
import type { PieceId } from '../../progress/log.ts';
import { Mends, Taken } from '../mends/mends.tsx';

/** The garment before the changes typed so far and with them; nothing where it is new. */
export function useAsked(editor: Editor, inHand?: PieceId) {
  const { garment, old, history } = editor;
  useEffect(() => {
    if (old) void openStanding(garment);
  }, [garment, old]);
  const view = standingEdited.value;
  const asked = useMemo(
    () => (view ? askedOf(editor, view, inHand) : undefined),
    [view, history.now, editor.begun, inHand],
  );
  return { view, asked };
}

/** What the changes typed so far break in the making up, with what mends it; nothing where the garment is new. */
export function MendsHere({ editor, inHand }: { readonly editor: Editor; readonly inHand?: PieceId }) {
  const { view, asked } = useAsked(editor, inHand);
  const { mends = [] } = editor.history.now;
  if (!view || !asked) return null;
  return (
    <>
      <Mends asked={asked} onTake={(edits) => takeMend(edits, view)} />
      {mends.length > 0 && <Taken edits={mends} garment={asked.after} onLeave={leaveMends} />}
    </>
  );
}
