import { useMemo, useState } from 'preact/hooks';
import { joinByHand } from '../../app/garments/join-by-hand.ts';
import { type SeamWay, seamWays } from '../../knit/making-up/joint.ts';
import type { MakingUp } from '../../knit/making-up/making-up.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import type { GarmentId } from '../../progress/log.ts';
import { Button } from '../../ui/button/button.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { Group } from '../../ui/group/group.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';
import { type OpenEdge, OpenEdges } from './open-edges.tsx';
import { saysEdge } from './says-edge.ts';

interface JoinProps {
  readonly made: MakingUp;
  readonly garment: StandingGarment;
  readonly id: GarmentId;
}

const ways = {
  mattress: 'makingUp.wayMattress',
  'three-needle': 'makingUp.wayThreeNeedle',
  grafted: 'makingUp.wayGrafted',
  sewn: 'makingUp.waySewn',
} as const satisfies Readonly<Record<SeamWay, string>>;

/** What is left over, joined by hand: two edges, on the drawings or by their names, and how. */
export function JoinByHand({ made, garment, id }: JoinProps) {
  const open = useMemo(() => openEdges(made), [made]);
  const [chosen, choose] = useState<readonly number[]>([]);
  const [how, setHow] = useState<SeamWay>();
  const [isMissing, setMissing] = useState(false);
  if (open.length < 2) return null;
  const pick = (edge: number) => {
    setMissing(false);
    choose(chosen.includes(edge) ? chosen.filter((one) => one !== edge) : [...chosen, edge].slice(-2));
  };
  const [a, b] = chosen.map((edge) => open[edge]);
  const join = () => {
    if (!a || !b) return setMissing(true);
    choose([]);
    void joinByHand(id, [a.stretch, b.stretch], how ?? usualWay(a, b));
  };
  return (
    <Group title={say('makingUp.join')}>
      <p>{say('makingUp.joinHelp')}</p>
      <OpenEdges open={open} chosen={chosen} garment={garment} onPick={pick} />
      <fieldset class="join-list">
        <legend>{say('makingUp.joinEdges')}</legend>
        {open.map((edge, i) => (
          <label key={saysOpen(edge, garment)}>
            <input type="checkbox" checked={chosen.includes(i)} onChange={() => pick(i)} />
            {saysOpen(edge, garment)}
          </label>
        ))}
      </fieldset>
      <Choice
        label={say('makingUp.joinHow')}
        stacked
        value={how ?? (a && b ? usualWay(a, b) : 'mattress')}
        options={seamWays.map((value) => ({ value, label: say(ways[value]) }))}
        onChange={setHow}
      />
      {isMissing && (
        <Notice kind="warning" live>
          {say('makingUp.joinTwo')}
        </Notice>
      )}
      <Button kind="main" wide onPress={join}>
        {say('makingUp.joinThem')}
      </Button>
    </Group>
  );
}

const openEdges = ({ troubles }: MakingUp): readonly OpenEdge[] =>
  troubles.flatMap((trouble) =>
    trouble.kind === 'forgotten' && trouble.rest.stretch
      ? [{ rest: trouble.rest, stretch: trouble.rest.stretch }]
      : [],
  );

/** Sides in mattress stitch; two edges of live stitches with a third needle. */
function usualWay(a: OpenEdge, b: OpenEdge): SeamWay {
  const isSide = ({ stretch }: OpenEdge) => stretch.edge === 'right' || stretch.edge === 'left';
  return isSide(a) && isSide(b)
    ? 'mattress'
    : a.stretch.edge === 'top' && b.stretch.edge === 'top'
      ? 'three-needle'
      : 'sewn';
}

function saysOpen({ rest, stretch }: OpenEdge, garment: StandingGarment): string {
  const edge = saysEdge(stretch, garment);
  return rest.rows > 0
    ? say('makingUp.edgeRows', { edge, count: rest.rows })
    : say('makingUp.edgeStitches', { edge, count: rest.stitches });
}
