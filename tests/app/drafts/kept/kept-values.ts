import { newForm } from '../../../../src/app/drafts/design/form.ts';
import { garmentToForm } from '../../../../src/app/drafts/editor/garment-form.ts';
import type { KeptName } from '../../../../src/app/drafts/kept/kept-shapes.ts';
import { emptyDraft } from '../../../../src/app/drafts/pattern/draft.ts';
import { bodyOfSize } from '../../../../src/knit/garment/bodies.ts';
import { sampleGarment } from '../../../../src/knit/garment/sample.ts';

export const record = {
  ...sampleGarment,
  id: 'sample',
  createdAt: 1,
  changedAt: 1,
  pieces: sampleGarment.pieces.map((recipe, i) => ({ id: `p${i}`, recipe })),
};

/** One good value of each kind, as the app itself writes it. */
export const good: Readonly<Record<KeptName, object>> = {
  editorDraft: { version: 1, garment: 'g1', at: 5, form: garmentToForm(record) },
  patternDraft: { ...emptyDraft, name: 'Shawl', text: 'Cast on 40 sts.', gauge: { stitches: 22 } },
  designForm: { ...newForm(), own: { 'neck.widthMm': null, 'hem.fabric': 'rib 1x1' } },
  person: { name: 'Ada', body: bodyOfSize('women', 'M') },
  sizeSet: {
    version: 1,
    table: 'women',
    sizes: ['S', 'M'],
    people: [{ name: 'Ada', body: bodyOfSize('women', 'M') }],
    adjusted: [
      { path: 'lengthMm', mm: 600, size: 'M' },
      { path: 'hem.heightMm', mm: 50 },
    ],
  },
  readDesign: { kind: 'read', version: 1, options: { size: 2, gauge: { stitches: 22, rows: 30 } } },
};
const timing = { first: '1', rhythm: [{ every: '4', times: '2' }] };

/** A garment in the editor that has something of every kind, with what may be left out as well. */
const typed = {
  version: 2,
  garment: 'g1',
  at: 5,
  base: JSON.parse(JSON.stringify(record)) as unknown,
  form: {
    ...garmentToForm(record),
    mends: [
      { kind: 'rows', piece: 'Back', makes: [1], part: 'Back', section: 1, called: 'body', by: -2 },
      { kind: 'width', piece: 'Sleeve', part: 'Sleeve', by: 4 },
      { kind: 'pick up', piece: 'Band', edges: [{ at: 0, along: 'Back', was: 40, now: 42 }] },
      { kind: 'shoulder', piece: 'Back', edges: ['left', 'right'], by: -1, from: 'neck' },
    ],
    pieces: [
      {
        id: 'p1',
        form: {
          name: 'Back',
          makes: '2',
          mirrored: true,
          role: 'back',
          gauge: { stitches: '20', rows: '28', fabric: 'stocking', needle: '4' },
          gauges: { garter: { stitches: 20, rows: 40 } },
          parts: [
            {
              name: 'Body',
              start: { kind: 'cast on', stitches: '40' },
              firstSide: 'RS',
              selvedge: 'slipped',
              sections: [
                {
                  name: '',
                  rows: '20',
                  fabric: 'stocking',
                  needle: '4',
                  shaping: [
                    {
                      kind: 'edge',
                      edge: 'both',
                      change: 'decrease',
                      by: '1',
                      inset: '1',
                      lean: 'mirrored',
                      ...timing,
                    },
                    { kind: 'across', change: 'increase', stitches: '4', row: '3' },
                    { kind: 'middle', from: '20', ...timing },
                    { kind: 'bind off', edge: 'right', first: '1', every: '2', groups: '3 2 1' },
                  ],
                },
              ],
              end: 'split',
            },
            {
              name: 'Left',
              start: { kind: 'split', part: 'Body', stitches: '20', edge: 'left' },
              sections: [],
              end: 'hold',
            },
            {
              name: 'Band',
              start: { kind: 'pick up', edges: [{ along: 'Body', stitches: '40', held: true }] },
              sections: [],
              end: 'bind off',
            },
          ],
        },
      },
    ],
  },
};
export const full: Readonly<Record<KeptName, object>> = {
  ...good,
  editorDraft: typed,
  designForm: {
    ...newForm(),
    person: { name: 'Ada', table: 'women', size: 'M' },
    own: { 'hem.fabric': 'rib 1x1', 'neck.widthMm': null, 'neck.depthMm': 70 },
  },
  patternDraft: { ...emptyDraft, gauge: { stitches: 20, rows: 28, fabric: 'garter', needle: 4 } },
};

const SECTION = 'editorDraft.form.pieces.0.form.parts.0';
/** What may stand at each place where one of several words is chosen. Spelled out: a word that goes is lost to every draft with it. */
export const choices: Readonly<Record<string, readonly unknown[]>> = {
  'editorDraft.version': [1, 2],
  [`${SECTION}.sections.0.shaping.0.edge`]: ['right', 'left', 'both'],
  [`${SECTION}.sections.0.shaping.0.change`]: ['decrease', 'increase'],
  [`${SECTION}.sections.0.shaping.0.lean`]: ['mirrored', 'plain'],
  [`${SECTION}.sections.0.shaping.1.change`]: ['decrease', 'increase'],
  [`${SECTION}.sections.0.shaping.3.kind`]: ['bind off', 'cast on', 'turn'],
  [`${SECTION}.sections.0.shaping.3.edge`]: ['right', 'left', 'both'],
  [`${SECTION}.firstSide`]: ['RS', 'WS'],
  [`${SECTION}.selvedge`]: ['plain', 'slipped'],
  [`${SECTION}.end`]: ['bind off', 'hold', 'split'],
  'editorDraft.form.pieces.0.form.parts.1.start.edge': ['right', 'left', 'middle'],
  'editorDraft.form.pieces.0.form.parts.1.start.kind': ['split'],
  'editorDraft.form.pieces.0.form.parts.0.start.kind': ['cast on'],
  'editorDraft.form.pieces.0.form.parts.2.start.kind': ['pick up'],
  'editorDraft.form.pieces.0.form.role': [
    'back',
    'front',
    'left front',
    'right front',
    'sleeve',
    'neckband',
    'front band',
    'armhole band',
    'other',
  ],
  'editorDraft.form.mends.0.kind': ['rows'],
  'editorDraft.form.mends.1.kind': ['width'],
  'editorDraft.form.mends.2.kind': ['pick up'],
  'editorDraft.form.mends.3.kind': ['shoulder'],
  'patternDraft.version': [1],
  'designForm.version': [1, 2, 3, 4],
  'sizeSet.version': [1],
  'sizeSet.table': ['women', 'men', 'children', 'babies'],
  'sizeSet.adjusted.0.path': [
    'lengthMm',
    'sleeve.lengthMm',
    'ease.chest',
    'ease.upperArm',
    'ease.wrist',
    'ease.armholeDepth',
    'neck.widthMm',
    'neck.depthMm',
    'neck.backDepthMm',
    'shoulderDropMm',
    'hem.heightMm',
    'cuff.heightMm',
    'neckband.heightMm',
  ],
  'readDesign.kind': ['read'],
  'readDesign.version': [1],
};
