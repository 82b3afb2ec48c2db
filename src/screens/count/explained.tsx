import { useMemo, useState } from 'preact/hooks';
import type { InHand } from '../../app/state.ts';
import { countAt } from '../../knit/piece/count/count-at.ts';
import { landmarksOf } from '../../knit/piece/count/landmarks.ts';
import type { Look, Seen } from '../../knit/piece/count/look.ts';
import { type Check, explainCount } from '../../knit/piece/explain-count.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysLook, saysSeen, saysShare } from '../../words/count.ts';
import { say } from '../../words/say.ts';
import { ExplanationCard } from './explanation-card.tsx';

interface ExplainedProps {
  readonly now: InHand;
  readonly counted: number;
  readonly checks: readonly Check[];
  readonly lifelines: readonly number[];
  readonly onAnew: () => void;
  /** mended by hand: the needle has what is planned */
  readonly onMended: () => void;
}

interface Answer {
  readonly look: Look;
  readonly seen: Seen;
}

/** What explains the count, the likeliest first, and the one look that would tell more. */
export function Explained({ now, counted, checks, lifelines, onAnew, onMended }: ExplainedProps) {
  const [answers, setAnswers] = useState<readonly Answer[]>([]);
  const { part, place } = now;
  const planned = countAt(part, place.rows) ?? 0;
  const found = useMemo(
    () => explainCount(part, place.rows, counted, { checks, lifelines, answers }),
    [part, place.rows, counted, checks, lifelines, answers],
  );
  const look = found[0]?.ask;
  // as it is read: what is as likely as the first is the likeliest too
  const most = found[0] && saysShare(found[0].likelihood);
  const off = counted - planned;
  return (
    <>
      <Notice
        kind="warning"
        live
        title={say(off > 0 ? 'count.tooMany' : 'count.tooFew', { count: Math.abs(off) })}
        actions={<Button onPress={onAnew}>{say('count.countAgain')}</Button>}
      >
        {say('count.countedAgainst', { counted, planned })}
      </Notice>
      {look && (
        <LookCard
          look={look}
          now={now}
          lifelines={lifelines}
          onSeen={(seen) => setAnswers([...answers, { look, seen }])}
        />
      )}
      {answers.length > 0 && (
        <p class="count-row" role="status">
          <span>{say('count.lookedDone')}</span>
          <Button kind="quiet" onPress={() => setAnswers([])}>
            {say('count.lookAgain')}
          </Button>
        </p>
      )}
      <h2>{say('count.whatExplains')}</h2>
      <ol class="count-list">
        {found.map((one, i) => (
          <li key={one.cause}>
            <ExplanationCard
              explanation={one}
              now={now}
              counted={counted}
              planned={planned}
              onMended={onMended}
              likeliest={saysShare(one.likelihood) === most}
              open={i === 0}
            />
          </li>
        ))}
      </ol>
    </>
  );
}

/** More than these are not offered; the rest is 'something else'. */
const MOST_OPTIONS = 6;

interface LookCardProps {
  readonly look: Look;
  readonly now: InHand;
  readonly lifelines: readonly number[];
  readonly onSeen: (seen: Seen) => void;
}

function LookCard({ look, now, lifelines, onSeen }: LookCardProps) {
  const { part, place } = now;
  const marks = landmarksOf(part, place.rows, lifelines);
  const mark = marks.filter(({ row }) => row === look.landmark).at(-1);
  const section = part.rows[place.rows - 1]?.section ?? 0;
  const options = look.options.slice(0, MOST_OPTIONS);
  return (
    <section class="card card-place count-look" aria-label={say('count.lookTitle')}>
      <h2>{say('count.lookTitle')}</h2>
      <p>{saysLook(look, part, mark)}</p>
      {options.map(({ answer, planned }) => {
        const said = saysSeen(answer, part, section);
        return (
          <Button key={said} wide onPress={() => onSeen(answer)}>
            {planned ? say('count.asPlanned', { what: said }) : said}
          </Button>
        );
      })}
      <Button kind="quiet" wide onPress={() => onSeen({})}>
        {say('count.lookNone')}
      </Button>
    </section>
  );
}
