import { Fragment } from 'preact';
import { setPlace } from '../../app/in-hand/count.ts';
import { goTo } from '../../app/navigate.ts';
import type { InHand } from '../../app/state.ts';
import type { Said } from '../../knit/piece/count/advice.ts';
import type { Explanation } from '../../knit/piece/explain-count.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { saysAdvice, saysCause, saysShare, saysSign } from '../../words/count.ts';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import { hrefToTool } from './tools.ts';

/** What puts the planned count on the needle at once; a stitch made or taken out comes a row later. */
const atOnce: ReadonlySet<Said['code']> = new Set(['catch stitch', 'let down']);

interface ExplanationCardProps {
  readonly explanation: Explanation;
  readonly now: InHand;
  readonly counted: number;
  readonly planned: number;
  readonly likeliest: boolean;
  readonly onMended: () => void;
}

/** One thing that can be: what to look for, and what to do. */
export function ExplanationCard(props: ExplanationCardProps) {
  const { explanation, now, counted, planned, likeliest, onMended } = props;
  // what mends it at once on the needle, before what plans around it
  const lastByHand = explanation.toDo.filter(({ code }) => atOnce.has(code)).at(-1);
  const share = saysShare(explanation.likelihood);
  return (
    <Card tone={likeliest ? 'place' : 'plain'} label={saysCause(explanation)}>
      <div class="count-card">
        <h3>{saysCause(explanation)}</h3>
        {explanation.cause !== 'unknown' && (
          <p class="count-soft">{likeliest ? `${say('count.likeliest')}, ${share}` : share}</p>
        )}
        <p>{saysSign(explanation)}</p>
        {explanation.toDo.map((advice) => (
          <Fragment key={advice.code}>
            <Advice advice={advice} now={now} counted={counted} edge={explanation.edge} />
            {advice === lastByHand && (
              <Button icon="check" wide onPress={onMended}>
                {say('count.mended', { count: planned })}
              </Button>
            )}
          </Fragment>
        ))}
      </div>
    </Card>
  );
}

interface AdviceProps {
  readonly advice: Said;
  readonly now: InHand;
  readonly counted: number;
  readonly edge: Explanation['edge'];
}

/** What the app can do is a button; what only hands can do is said. */
function Advice({ advice, now, counted, edge }: AdviceProps) {
  const said = saysAdvice(advice);
  const { row = 0 } = advice.figures;
  switch (advice.code) {
    case 'set place':
      return (
        <Button
          icon="flag"
          wide
          onPress={() =>
            void setPlace(Number(row), 'place').then((done) => done && goTo(hrefToMake(now.make)))
          }
        >
          {said}
        </Button>
      );
    case 'rip back':
      return (
        <Button icon="rip" wide href={hrefToTool(now.make, 'rip', `?to=${row}`)}>
          {said}
        </Button>
      );
    case 'accept':
      return (
        <Button
          icon="edit"
          wide
          href={hrefToTool(
            now.make,
            'rework',
            `?stitches=${counted}${edge === undefined ? '' : `&edge=${edge}`}`,
          )}
        >
          {said}
        </Button>
      );
    case 'find the place':
      return (
        <Button icon="find" wide href={hrefToTool(now.make, 'find')}>
          {said}
        </Button>
      );
    default:
      return <p>{said}</p>;
  }
}
