import type { GarmentView, PieceView } from '../../app/state.ts';
import type { Stripe, Striped } from '../../knit/yarn/stripes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { say } from '../../words/say.ts';
import type { ChangeYarn } from './change-yarn.ts';

interface StripedRowsProps {
  readonly view: GarmentView;
  readonly change: ChangeYarn;
  /** they are laid through the whole garment anew */
  readonly onLay: () => void;
}

/** In which rows of each piece the stripes lie, counted from its cast-on, and with which of theirs they begin there. */
export function StripedRows({ view, change, onLay }: StripedRowsProps) {
  const { striped } = view.garment;
  return (
    <>
      {striped ? (
        view.pieces.map((piece) => <StripedPiece key={piece.id} piece={piece} view={view} change={change} />)
      ) : (
        <p>{say('yarn.stripedAnew')}</p>
      )}
      <p>{say('yarn.stripesThroughHint')}</p>
      <Button onPress={onLay}>{say('yarn.stripesThrough')}</Button>
    </>
  );
}

function StripedPiece({
  piece: { id, name },
  view,
  change,
}: Omit<StripedRowsProps, 'onLay'> & { readonly piece: PieceView }) {
  const { striped = {}, stripes = [] } = view.garment;
  const own = Object.hasOwn(striped, id) ? striped[id] : undefined;
  const put = (to: (now: Striped | undefined) => Striped | undefined) =>
    change((now) => {
      const { [id]: was, ...others } = now.striped ?? {};
      const next = to(was);
      return { ...now, striped: next ? { ...others, [id]: next } : others };
    });
  const set = (edit: (now: Striped) => Striped) => put((now) => edit(now ?? ALL));
  return (
    <>
      <Toggle
        label={say('yarn.stripedPiece', { piece: name })}
        on={own !== undefined}
        onChange={(on) => put(() => (on ? ALL : undefined))}
      />
      {own && (
        <div class="yarn-pair">
          <NumberField
            label={say('yarn.stripedFrom')}
            value={own.first}
            min={1}
            onChange={(first) => first !== undefined && first > 0 && set((now) => ({ ...now, first }))}
          />
          <NumberField
            label={say('yarn.stripedTo')}
            hint={say('yarn.stripedToEnd')}
            value={own.last}
            min={1}
            onChange={(last) =>
              set(({ first, at, back }) => ({
                first,
                at,
                ...(back && { back }),
                ...(last !== undefined && last > 0 && { last }),
              }))
            }
          />
          <NumberField
            label={say('yarn.stripedAt')}
            value={inTurn(own.at, stripes)}
            min={1}
            onChange={(at) => at !== undefined && at > 0 && set((now) => ({ ...now, at }))}
          />
        </div>
      )}
    </>
  );
}

const ALL: Striped = { first: 1, at: 1 };

/** Stripes repeat: the row among their first turn. */
function inTurn(at: number, stripes: readonly Stripe[]): number {
  const period = stripes.reduce((sum, { rows }) => sum + rows, 0);
  return period > 0 ? ((((at - 1) % period) + period) % period) + 1 : at;
}
