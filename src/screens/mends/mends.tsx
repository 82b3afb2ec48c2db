import './mends.css';
import { useEffect, useState } from 'preact/hooks';
import { keepFromNowOn } from '../../app/start/keep-wanted.ts';
import { fault } from '../../knit/fault.ts';
import { consequences } from '../../knit/making-up/consequences.ts';
import type { Edit } from '../../knit/making-up/edit.ts';
import type { Answer, Asked, answers } from '../../knit/making-up/mends.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { saysConsequence, saysMend, saysNoMend } from './says-consequence.ts';

interface MendsProps {
  /** the garment before and after the change; the same object while nothing is changed */
  readonly asked: Asked<StandingGarment>;
  /** makes the changes of a mend: with the change, in one save */
  readonly onTake: (edits: readonly Edit[]) => void;
  /** said where nothing is broken, too */
  readonly saysAll?: boolean;
}

/** What a change breaks, edge by edge, each with the buttons that mend it. */
export function Mends({ asked, onTake, saysAll = false }: MendsProps) {
  const { all: found, isLost = false } = useAnswers(asked);
  if (found.length === 0) return saysAll ? <Notice kind="note">{say('mends.matchesAll')}</Notice> : null;
  return (
    <Notice kind="warning" title={say('mends.title')} live>
      <ul class="mends-list">
        {found.map((answer) => (
          <li key={JSON.stringify(answer.what)}>
            {[...new Set(answer.what.map((one) => saysConsequence(one, asked.after)))].map((text) => (
              <span key={text}>{text}</span>
            ))}
            {'mends' in answer ? (
              <Ways answer={answer} garment={asked.after} onTake={onTake} />
            ) : (
              <span class="mends-looking">
                {isLost ? saysFault(fault('app-incomplete')) : say('mends.looking')}
              </span>
            )}
          </li>
        ))}
      </ul>
    </Notice>
  );
}

interface WaysProps extends Pick<MendsProps, 'onTake'> {
  readonly answer: Answer<StandingGarment>;
  readonly garment: StandingGarment;
}

function Ways({ answer, garment, onTake }: WaysProps) {
  const none = saysNoMend(answer);
  return (
    <>
      {answer.mends.map(({ edits }) => {
        const label = saysMend(edits, garment);
        return (
          <Button key={label} wide onPress={() => onTake(edits)}>
            {label}
          </Button>
        );
      })}
      {answer.mends.length > 0 && answer.other === 'begun' && <span>{say('mends.begun')}</span>}
      {none !== undefined && <span>{none}</span>}
    </>
  );
}

interface TakenProps {
  readonly edits: readonly Edit[];
  readonly garment: StandingGarment;
  readonly onLeave: () => void;
}

/** What is saved together with a change, since she took it; and the way back. */
export function Taken({ edits, garment, onLeave }: TakenProps) {
  const what = saysMend(edits, garment);
  return (
    <Notice
      kind="done"
      title={say('mends.withIt')}
      live
      actions={
        <Button kind="quiet" onPress={onLeave}>
          {say('mends.leave')}
        </Button>
      }
    >
      {what}
    </Notice>
  );
}

type Found = Answer<StandingGarment> | Pick<Answer<StandingGarment>, 'what'>;

interface Answers {
  readonly all: readonly Found[];
  /** what looks for mends cannot be had: it is fetched when it is wanted first, and then kept */
  readonly isLost?: true;
}

/** The search, from its own file. */
async function searching(): Promise<typeof answers | undefined> {
  const found = await import('../../knit/making-up/mends.ts').catch(() => undefined);
  if (found) void keepFromNowOn('mends');
  return found?.answers;
}

/** What is broken at once; what mends it when she pauses, one answer after the other, so that the page goes on answering. */
function useAnswers(asked: Asked<StandingGarment>): Answers {
  const [found, setFound] = useState<Answers & { readonly of: Asked<StandingGarment> }>();
  useEffect(() => {
    let isOver = false;
    let timer = setTimeout(() => void begin(), PAUSE_MS);
    async function begin(): Promise<void> {
      const search = await searching();
      if (isOver) return;
      if (!search) return setFound({ of: asked, all: broken(asked), isLost: true });
      const rest = search(asked);
      const all: Answer<StandingGarment>[] = [];
      const next = (): void => {
        const { value } = rest.next();
        if (value === undefined) setFound({ of: asked, all });
        else {
          all.push(value);
          timer = setTimeout(next);
        }
      };
      next();
    }
    return () => {
      isOver = true;
      clearTimeout(timer);
    };
  }, [asked]);
  return found?.of === asked ? found : { all: broken(asked) };
}

/** How many places of the making up a change breaks. */
export const brokenBy = (asked: Asked<StandingGarment>): number => broken(asked).length;

/** Where they are told comes into sight. */
export function showBroken(): void {
  const list = document.querySelector('.mends-list');
  list?.scrollIntoView({ block: 'center' });
  list?.querySelector('button')?.focus({ preventScroll: true });
}

const listed = new WeakMap<Asked<StandingGarment>, readonly Found[]>();

/** Worked out once for each: what lists it and the foot that counts it both ask. */
function broken(asked: Asked<StandingGarment>): readonly Found[] {
  const known =
    listed.get(asked) ?? consequences(asked.before, asked.after).map((what) => ({ what: [what] }));
  listed.set(asked, known);
  return known;
}

const PAUSE_MS = 300;
