import { useState } from 'preact/hooks';
import { logEntry } from '../../app/in-hand/count.ts';
import { knownFrom } from '../../app/in-hand/known.ts';
import { countAt } from '../../knit/piece/count/count-at.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { NumberPad } from '../../ui/pad/number-pad.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import type { CountPageProps } from './count-page.ts';
import { Explained } from './explained.tsx';

/** She counts the needle; it agrees, or what can be is said. */
export function CheckPage({ now, entries }: CountPageProps) {
  const [typed, setTyped] = useState<number>();
  const [counted, setCounted] = useState<number>();
  const { rows } = now.place;
  const planned = countAt(now.part, rows) ?? 0;
  const { firm, checks, lifelines } = knownFrom(entries, now.part);
  const check = async (count: number) => {
    if (await logEntry({ kind: 'check', count })) setCounted(count);
  };
  const anew = () => {
    setCounted(undefined);
    setTyped(undefined);
  };
  if (counted !== undefined && counted !== planned) {
    return (
      <Explained
        now={now}
        counted={counted}
        checks={checks}
        lifelines={lifelines}
        onAnew={anew}
        onMended={() => void check(planned)}
      />
    );
  }
  return (
    <>
      <p>
        {say('count.rowsDone', { count: rows })} <strong>{say('count.planned', { count: planned })}</strong>
      </p>
      {counted === undefined ? (
        <>
          <p class="count-soft">{firm ? saysFirm(firm.row) : say('count.firmNone')}</p>
          <div class="count-thumb">
            <Shows what="count-thumb" />
            <Button kind="main" icon="check" wide onPress={() => void check(planned)}>
              {say('count.agrees')}
            </Button>
            <NumberPad
              label={say('count.onNeedle')}
              value={typed}
              doneLabel={say('count.compare')}
              onChange={setTyped}
              onDone={(count) => void check(count)}
            />
          </div>
        </>
      ) : (
        <>
          <Notice kind="done" live>
            {rows === 0
              ? say('count.agreedStart', { count: counted })
              : say('count.agreed', { count: counted, row: rows })}
          </Notice>
          <Button kind="main" wide href={hrefToMake(now.make)}>
            {say('count.backToRow')}
          </Button>
        </>
      )}
    </>
  );
}

const saysFirm = (row: number): string =>
  row === 0 ? say('count.firmGroundStart') : say('count.firmGround', { row });
