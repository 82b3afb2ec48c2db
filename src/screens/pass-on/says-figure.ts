import type { AdjustablePath } from '../../knit/garment/adjust.ts';
import { say } from '../../words/say.ts';

const border = (key: 'draft.hem' | 'draft.cuff' | 'draft.neckband') => () =>
  say('draft.borderHeight', { border: say(key) });
const ease =
  (key: 'draft.easeChest' | 'draft.easeUpperArm' | 'draft.easeWrist' | 'draft.easeArmholeDepth') => () =>
    `${say('draft.ease')}: ${say(key)}`;

const labels: Readonly<Record<AdjustablePath, () => string>> = {
  lengthMm: () => say('draft.lengthMm'),
  'sleeve.lengthMm': () => say('draft.sleeveLength'),
  'ease.chest': ease('draft.easeChest'),
  'ease.upperArm': ease('draft.easeUpperArm'),
  'ease.wrist': ease('draft.easeWrist'),
  'ease.armholeDepth': ease('draft.easeArmholeDepth'),
  'neck.widthMm': () => say('draft.neckWidth'),
  'neck.depthMm': () => say('draft.neckDepth'),
  'neck.backDepthMm': () => say('draft.backNeckDepth'),
  shoulderDropMm: () => say('draft.shoulderDrop'),
  'hem.heightMm': border('draft.hem'),
  'cuff.heightMm': border('draft.cuff'),
  'neckband.heightMm': border('draft.neckband'),
};

/** A figure of a design by name. Needs the catalogue 'draft'. */
export const saysFigure = (path: AdjustablePath): string => labels[path]();
