import { change, design, form, setOwn } from '../../app/drafts/design/designer.ts';
import { fits } from '../../knit/garment/ease.ts';
import { armholeKinds } from '../../knit/garment/kinds/armholes.ts';
import { type GarmentKind, garmentKinds } from '../../knit/garment/kinds/garments.ts';
import { neckShapes } from '../../knit/garment/kinds/necks.ts';
import { silhouettes } from '../../knit/garment/kinds/silhouettes.ts';
import { sleeveShapes } from '../../knit/garment/kinds/sleeve-shapes.ts';
import type { Choices } from '../../knit/garment/start.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { Group } from '../../ui/group/group.tsx';
import { say } from '../../words/say.ts';
import { FaultAt } from './at-field.tsx';
import { saysName } from './says-name.ts';
import { worded } from './worded.ts';

const kinds = Object.keys(garmentKinds) as readonly GarmentKind[];

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
        </>
      )}
    </Group>
  );
}
