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

interface ExplanationCardProps {
  readonly explanation: Explanation;
  readonly now: InHand;
  readonly counted: number;
  readonly planned: number;
  readonly likeliest: boolean;
  /** it stands open; the others are a line each until they are touched */
  readonly open: boolean;
  readonly onMended: () => void;
}

/** One thing that can be: what to look for, and what to do. */
export function ExplanationCard({ explanation, likeliest, open, ...figures }: ExplanationCardProps) {
  const share = saysShare(explanation.likelihood);
  return (
    <Card tone={likeliest ? 'place' : 'plain'} label={saysCause(explanation)}>
      <details class="count-fold" open={open}>
        <summary>
          <div>
            <h3>{saysCause(explanation)}</h3>
            {explanation.cause !== 'unknown' && (
              <p class="count-soft">{likeliest ? `${say('count.likeliest')}, ${share}` : share}</p>
            )}
          </div>
        </summary>
        <div class="count-card">
          <p>{saysSign(explanation)}</p>
          {explanation.toDo.map((advice) => (
            <Advice key={advice.code} advice={advice} edge={explanation.edge} {...figures} />
          ))}
        </div>
      </details>
    </Card>
  );
}

interface AdviceProps extends Omit<ExplanationCardProps, 'explanation' | 'likeliest' | 'open'> {
  readonly advice: Said;
  readonly edge: Explanation['edge'];
}

/** What the app can do is a button; what only hands can do is said. */
function Advice({ advice, now, counted, planned, edge, onMended }: AdviceProps) {
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
          icon="replan"
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
    // the planned count is on the needle at once; a stitch made or taken out comes a row later
    case 'catch stitch':
    case 'let down':
      return (
        <>
          <p>{said}</p>
          <Button icon="check" wide onPress={onMended}>
            {say('count.mended', { count: planned })}
          </Button>
        </>
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
