import { change, design, form, setOwn } from '../../app/drafts/design/designer.ts';
import { fits } from '../../knit/garment/ease.ts';
import { armholeKinds, armholes } from '../../knit/garment/kinds/armholes.ts';
import { type GarmentKind, garmentKinds } from '../../knit/garment/kinds/garments.ts';
import { neckShapes, necks } from '../../knit/garment/kinds/necks.ts';
import { silhouetteFacts, silhouettes } from '../../knit/garment/kinds/silhouettes.ts';
import { sleeveShapeFacts, sleeveShapes } from '../../knit/garment/kinds/sleeve-shapes.ts';
import type { Choices } from '../../knit/garment/start.ts';
import { Group } from '../../ui/group/group.tsx';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { FaultAt } from './at-field.tsx';
import { drawnArmhole, drawnGarment, drawnNeck, drawnSilhouette, drawnSleeve } from './drawn-choices.ts';
import { Tiles } from './tiles.tsx';
import { worded } from './worded.ts';

const kinds = Object.keys(garmentKinds) as readonly GarmentKind[];

/** A choice's words with its drawing, both by its record. */
const drawn = <Name extends string, Facts>(
  names: readonly Name[],
  records: Readonly<Record<Name, Facts>>,
  draw: (facts: Facts) => string,
) => worded(names).map((option) => ({ ...option, d: draw(records[option.value]) }));

const saysEase = (mm: number): string => `${say('draft.ease')} ${saysLength(mm)}`;

const choose = (by: Partial<Choices>): void =>
  change((old) => ({ ...old, choices: { ...old.choices, ...by } }));

export function Shape() {
  const now = form.value;
  const wished = design.value;
  if (!now || !wished) return null;
  const { kind, armhole, neck, fit } = now.choices;
  const { sleeves } = garmentKinds[kind];
  return (
    <Group title={say('draft.shape')} open>
      <Tiles
        label={say('draft.kind')}
        value={kind}
        options={drawn(kinds, garmentKinds, drawnGarment)}
        onChange={(value) => choose({ kind: value })}
      />
      <Tiles
        label={say('draft.neckShape')}
        value={neck}
        options={drawn(neckShapes, necks, drawnNeck)}
        onChange={(value) => choose({ neck: value })}
      />
      <Tiles
        label={say('draft.armhole')}
        value={armhole}
        options={drawn(armholeKinds, armholes, drawnArmhole)}
        onChange={(value) => choose({ armhole: value })}
      />
      {sleeves && (
        <>
          <Tiles
            label={say('draft.sleeveShape')}
            value={wished.sleeve.shape}
            options={drawn(sleeveShapes, sleeveShapeFacts, drawnSleeve)}
            onChange={(value) => setOwn('sleeve.shape', value)}
          />
          <FaultAt path="sleeve.shape" />
        </>
      )}
      <Tiles
        label={say('draft.silhouette')}
        value={wished.silhouette}
        options={drawn(silhouettes, silhouetteFacts, drawnSilhouette)}
        onChange={(value) => setOwn('silhouette', value)}
      />
      <FaultAt path="silhouette" />
      <Tiles
        label={say('draft.fit')}
        says={Number.isFinite(wished.ease.chest) ? saysEase(wished.ease.chest) : undefined}
        value={fit}
        options={worded(fits)}
        onChange={(value) => choose({ fit: value })}
      />
    </Group>
  );
}
