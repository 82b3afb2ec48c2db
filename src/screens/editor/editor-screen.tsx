import type { GarmentId } from '../../progress/log.ts';
import './editor.css';
import { useEffect, useRef } from 'preact/hooks';
import { beginAnew, editor, openEditor, undo, unread } from '../../app/drafts/editor/editor.ts';
import type { PieceEntry } from '../../app/drafts/editor/garment-form.ts';
import { whenSavedElsewhere } from '../../app/fresh.ts';
import { hrefTo, type Route } from '../../app/routes.ts';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { Toast } from '../../ui/toast/toast.tsx';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { Opening } from '../unread.tsx';
import { done, openSection, pieceOpen, shownPart } from './changes.ts';
import { ElsewhereNotice } from './draft-notice.tsx';
import { GarmentPage } from './garment-page.tsx';
import { PiecePage } from './piece-page.tsx';
import { SaveFoot } from './save-foot.tsx';

/** A garment by its numbers: the list of its pieces, and one piece with all its sections. */
export default function EditorScreen({ route }: { readonly route: Route }) {
  const garment = route.at.garment;
  useEditor(garment);
  const now = editor.value;
  const form = now?.history.now;
  const piece = form?.pieces.find(({ id }) => id === route.query.get('piece'));
  const home = hrefTo(
    garment === undefined ? 'newGarment' : 'editGarment',
    garment === undefined ? {} : { garment },
  );
  const title = say(garment === undefined ? 'editor.titleNew' : 'editor.titleEdit');
  const pieceName = piece && (piece.form.name.trim() || say('editor.unnamedPiece'));
  const garmentName = form?.name.trim() || say('editor.unnamedGarment');
  useArrival(pieceName ?? title, now !== undefined);
  usePageTurn(piece);
  if (now === undefined) {
    return (
      <Screen title={title} back={{ href: hrefTo('workbasket'), label: say('editor.backToBasket') }}>
        <Opening
          unread={unread.value}
          opening={say('editor.opening')}
          beginAnew={say('editor.beginAnew')}
          onAnew={() => void beginAnew(garment)}
        />
      </Screen>
    );
  }
  if (now === null || form === undefined) return <NoGarment title={title} />;
  const back = piece
    ? { href: home, label: say('editor.backToGarment', { garment: garmentName }) }
    : now.old
      ? {
          href: hrefTo('garment', { garment: now.garment }),
          label: say('editor.backToGarment', { garment: now.old.name }),
        }
      : { href: hrefTo('workbasket'), label: say('editor.backToBasket') };
  return (
    <Screen
      title={pieceName ?? title}
      over={piece ? garmentName : undefined}
      back={back}
      actions={
        <IconButton
          icon="undo"
          label={say('editor.undo')}
          disabled={now.history.past.length === 0}
          onPress={takeBack}
        />
      }
      foot={
        <>
          <Toast
            text={done.value}
            undo={{ label: say('editor.undoShort'), onPress: takeBack }}
            onGone={() => {
              done.value = undefined;
            }}
          />
          <SaveFoot editor={now} piece={piece} />
        </>
      }
    >
      <ElsewhereNotice editor={now} />
      {piece ? (
        <PiecePage key={piece.id} entry={piece} isBegun={now.begun.has(piece.id)} garment={now.garment} />
      ) : (
        <GarmentPage editor={now} form={form} home={home} />
      )}
    </Screen>
  );
}

/** Opens it, and takes over what another window saves of the same garment meanwhile. */
function useEditor(garment: GarmentId | undefined): void {
  useEffect(() => {
    void openEditor(garment);
    return garment === undefined ? undefined : whenSavedElsewhere(garment, () => void openEditor(garment));
  }, [garment]);
}

/** From the list to a piece and back: the focus goes to the heading, and back to the piece that it came from. */
function usePageTurn(entry: PieceEntry | undefined): void {
  const piece = entry?.id;
  const before = useRef(piece);
  useEffect(() => {
    if (before.current === piece) return;
    const from = document.querySelector<HTMLElement>(`[data-piece="${before.current}"]`);
    before.current = piece;
    const isFresh = entry !== undefined && isBlank(entry);
    openSection.value = isFresh ? { piece: entry.id, part: 0, section: 'start' } : undefined;
    shownPart.value = undefined;
    pieceOpen.value = isFresh;
    done.value = undefined;
    if (piece === undefined && from) from.focus();
    else {
      scrollTo(0, 0);
      document.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
    }
  }, [piece]);
}

/** A piece of which nothing was typed opens with what is asked first: its name, and how it begins. */
function isBlank({ form }: PieceEntry): boolean {
  const [start, ...more] = form.parts.map((part) => part.start);
  return more.length === 0 && start?.kind === 'cast on' && start.stitches === '';
}

function takeBack(): void {
  done.value = undefined;
  undo();
}

function NoGarment({ title }: { readonly title: string }) {
  return (
    <Screen title={title} back={{ href: hrefTo('workbasket'), label: say('editor.backToBasket') }}>
      <Notice kind="note" live>
        {say('editor.noGarment')}
      </Notice>
    </Screen>
  );
}
