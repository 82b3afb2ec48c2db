import { form } from '../../app/drafts/design/designer.ts';
import type { Body } from '../../knit/garment/design.ts';
import { saysLength } from '../../words/measures.ts';
import { goToFigure } from './go-to-field.ts';

/** Where each measure is taken, in a box of 240 by 250: its line, and the foot of its figure. */
const taken = [
  ['head', 'M106 16Q120 24 134 16', [140, 18], 'start'],
  ['napeToWrist', 'M120 46L150 54L166 100L186 152', [192, 134], 'start'],
  ['crossBack', 'M92 58H148', [88, 56], 'end'],
  ['armholeDepth', 'M94 58V92', [70, 78], 'end'],
  ['chest', 'M92 92Q120 102 148 92', [120, 92], 'middle'],
  ['upperArm', 'M152 92L172 86', [178, 88], 'start'],
  ['napeToWaist', 'M120 46V138', [120, 122], 'middle'],
  ['arm', 'M88 96L58 152', [56, 118], 'end'],
  ['waist', 'M96 138Q120 147 144 138', [150, 160], 'start'],
  ['hip', 'M88 176Q120 187 152 176', [120, 200], 'middle'],
  ['wrist', 'M48 150L60 156', [44, 162], 'end'],
] as const satisfies readonly (readonly [
  keyof Body,
  string,
  readonly [number, number],
  'start' | 'middle' | 'end',
])[];

const outline =
  'M120 6C108 6 104 16 106 26C107 34 112 38 112 44L92 54C82 58 80 70 76 84L50 148L60 154L90 96C94 110 98 122 96 138C90 152 86 164 86 178L90 236H114L120 192L126 236H150L154 178C154 164 150 152 144 138C142 122 146 110 150 96L180 154L190 148L164 84C160 70 158 58 148 54L128 44C128 38 133 34 134 26C136 16 132 6 120 6Z';

/** Measures where they are taken; touching one leads to its field, which keys and readers find in the list below. */
export function BodyFigure() {
  const body = form.value?.body;
  if (!body) return null;
  return (
    <svg class="draft-body" viewBox="0 0 240 244" aria-hidden="true" onClick={goToFigure}>
      <path class="draft-made" d={outline} />
      {taken.map(([name, d, [x, y], anchor]) => (
        <g key={name}>
          <path class="draft-taken" d={d} />
          <text class="draft-labels" x={x} y={y} font-size={11} text-anchor={anchor} data-to={`body.${name}`}>
            {Number.isFinite(body[name]) ? saysLength(body[name]) : '?'}
          </text>
        </g>
      ))}
    </svg>
  );
}
