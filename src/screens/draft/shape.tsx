import { change, design, form, setOwn } from '../../app/design/designer.ts';
import {
  armholeKinds,
  type GarmentKind,
  garmentKinds,
  neckShapes,
  shoulderEnds,
  silhouettes,
  sleeveShapes,
} from '../../knit/garment/design.ts';
import { fits } from '../../knit/garment/ease.ts';
import type { Choices } from '../../knit/garment/start.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { Group } from '../../ui/group/group.tsx';
import { say } from '../../words/say.ts';
import { FaultAt } from './at-field.tsx';
import { saysName } from './says-name.ts';

const kinds = Object.keys(garmentKinds) as readonly GarmentKind[];

/** Options whose words are the catalogue's own names. */
const worded = <T extends string>(names: readonly T[]) =>
  names.map((value) => ({ value, label: saysName(value) }));

const choose = (by: Partial<Choices>): void =>
  change((old) => ({ ...old, choices: { ...old.choices, ...by } }));

export function Shape() {
  const now = form.value;
  const wished = design.value;
  if (!now || !wished) return null;
  const { kind, armhole, neck, fit } = now.choices;
  const { sleeves } = garmentKinds[kind];
  const says = [kind, armhole, neck, fit].map(saysName).join(', ');
  return (
    <Group title={say('draft.shape')} says={says} open>
      <Choice
        label={say('draft.kind')}
        value={kind}
        options={worded(kinds)}
        onChange={(value) => choose({ kind: value })}
      />
      <Choice
        label={say('draft.armhole')}
        value={armhole}
        options={worded(armholeKinds)}
        onChange={(value) => choose({ armhole: value })}
      />
      <Choice
        label={say('draft.neckShape')}
        value={neck}
        options={worded(neckShapes)}
        onChange={(value) => choose({ neck: value })}
      />
      <Choice
        label={say('draft.fit')}
        value={fit}
        options={worded(fits)}
        onChange={(value) => choose({ fit: value })}
      />
      <Choice
        label={say('draft.silhouette')}
        value={wished.silhouette}
        options={worded(silhouettes)}
        onChange={(value) => setOwn('silhouette', value)}
      />
      <FaultAt path="silhouette" />
      {sleeves && (
        <>
          <Choice
            label={say('draft.sleeveShape')}
            value={wished.sleeve.shape}
            options={worded(sleeveShapes)}
            onChange={(value) => setOwn('sleeve.shape', value)}
          />
          <FaultAt path="sleeve.shape" />
          <Choice
            label={say('draft.direction')}
            value={wished.sleeve.direction}
            options={worded(['cuff up', 'top down'] as const)}
            onChange={(value) => setOwn('sleeve.direction', value)}
          />
        </>
      )}
      {armhole !== 'raglan' && (
        <Choice
          label={say('draft.shoulderWay')}
          value={wished.shoulder ?? 'steps'}
          options={worded(['steps', 'short rows'] as const)}
          onChange={(value) => setOwn('shoulder', value)}
        />
      )}
      {armhole !== 'raglan' && wished.shoulder === 'short rows' && (
        <Choice
          label={say('draft.shoulderEnd')}
          value={wished.shoulderEnd ?? 'bind off'}
          options={worded(shoulderEnds)}
          onChange={(value) => setOwn('shoulderEnd', value)}
        />
      )}
      <Choice
        label={say('draft.tapers')}
        value={wished.tapers}
        options={worded(['blended', 'together'] as const)}
        onChange={(value) => setOwn('tapers', value)}
      />
    </Group>
  );
}
