import { design, form, setOwn } from '../../app/drafts/design/designer.ts';
import { armholes } from '../../knit/garment/kinds/armholes.ts';
import { garmentKinds } from '../../knit/garment/kinds/garments.ts';
import { shoulderEnds, shoulderFacts, shoulderWays } from '../../knit/garment/kinds/shoulders.ts';
import { turnWays } from '../../knit/piece/turn-way.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { say } from '../../words/say.ts';
import { Fold } from './fold.tsx';
import { saysName } from './says-name.ts';
import { worded } from './worded.ts';

/** What changes how it is knitted, not what it looks like: seldom touched. */
export function Worked() {
  const now = form.value;
  const wished = design.value;
  if (!now || !wished) return null;
  const { kind, armhole } = now.choices;
  const { toNeck } = armholes[armhole];
  return (
    <Fold title={say('draft.worked')} says={saysName(wished.tapers)}>
      {garmentKinds[kind].sleeves && (
        <Choice
          label={say('draft.direction')}
          value={wished.sleeve.direction}
          options={worded(['cuff up', 'top down'] as const)}
          onChange={(value) => setOwn('sleeve.direction', value)}
        />
      )}
      {!toNeck && (
        <Choice
          label={say('draft.shoulderWay')}
          value={wished.shoulder ?? 'steps'}
          options={worded(shoulderWays)}
          onChange={(value) => setOwn('shoulder', value)}
        />
      )}
      {!toNeck && shoulderFacts(wished.shoulder).turns && (
        <Choice
          label={say('draft.shoulderEnd')}
          value={wished.shoulderEnd ?? 'bind off'}
          options={worded(shoulderEnds)}
          onChange={(value) => setOwn('shoulderEnd', value)}
        />
      )}
      {!toNeck && shoulderFacts(wished.shoulder).turns && (
        <Choice
          label={say('draft.turns')}
          value={wished.turns ?? 'left to me'}
          options={[...(wished.turns ? [] : worded(['left to me'] as const)), ...worded(turnWays)]}
          onChange={(value) => setOwn('turns', value)}
        />
      )}
      <Choice
        label={say('draft.seamStitch')}
        hint={say('draft.seamStitchHint')}
        value={wished.seamStitch ? 'seam stitch' : 'no seam stitch'}
        options={worded(['seam stitch', 'no seam stitch'] as const)}
        onChange={(value) => setOwn('seamStitch', value)}
      />
      <Choice
        label={say('draft.tapers')}
        value={wished.tapers}
        options={worded(['blended', 'together'] as const)}
        onChange={(value) => setOwn('tapers', value)}
      />
    </Fold>
  );
}
