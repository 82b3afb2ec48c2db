import type { Body } from '../knit/garment/design.ts';
import type { say } from '../words/say.ts';

/** What a body is measured by, with its words. Needs the catalogue 'draft'. */
export const bodyMeasures = [
  ['chest', 'draft.bodyChest'],
  ['waist', 'draft.bodyWaist'],
  ['hip', 'draft.bodyHip'],
  ['crossBack', 'draft.bodyCrossBack', 'draft.bodyCrossBackHint'],
  ['armholeDepth', 'draft.bodyArmholeDepth', 'draft.bodyArmholeDepthHint'],
  ['napeToWaist', 'draft.bodyNapeToWaist'],
  ['napeToWrist', 'draft.bodyNapeToWrist', 'draft.bodyNapeToWristHint'],
  ['arm', 'draft.bodyArm'],
  ['upperArm', 'draft.bodyUpperArm'],
  ['wrist', 'draft.bodyWrist'],
  ['head', 'draft.bodyHead'],
] as const satisfies readonly (readonly [
  keyof Body,
  Parameters<typeof say>[0],
  Parameters<typeof say>[0]?,
])[];
