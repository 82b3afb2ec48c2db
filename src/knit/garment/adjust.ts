import type { Design } from './design.ts';

/** A figure of a design set otherwise than the rules have it, for one size by its name or for all. */
export interface Adjustment {
  readonly path: AdjustablePath;
  /** mm */
  readonly mm: number;
  /** for all sizes where it is left out; one size's own goes before */
  readonly size?: string;
}

/** Lengths of a design that a size may have of its own, by their path. */
export const adjustablePaths = [
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
] as const;
export type AdjustablePath = (typeof adjustablePaths)[number];

/** The design with one figure or choice by its path, 'neck.widthMm'. */
export function withFigure(design: Design, path: string, value: unknown): Design {
  const [outer = '', inner] = path.split('.');
  if (inner === undefined) return { ...design, [outer]: value };
  const whole = design[outer as keyof Design];
  return { ...design, [outer]: { ...(whole as object), [inner]: value } };
}

/** A figure of the design by its path; undefined where there is none, since it follows from the body. */
export function figureAt(design: Design, path: string): number | undefined {
  const [outer = '', inner] = path.split('.');
  const whole: unknown = design[outer as keyof Design];
  const found =
    inner === undefined ? whole : (whole as Readonly<Record<string, unknown>> | undefined)?.[inner];
  return typeof found === 'number' && Number.isFinite(found) ? found : undefined;
}

/** The design of a size with what was set for all sizes, then with what was set for its own. */
export const adjusted = (design: Design, adjustments: readonly Adjustment[], name: string): Design =>
  [undefined, name]
    .flatMap((of) => adjustments.filter(({ size }) => size === of))
    .reduce((made, { path, mm }) => withFigure(made, path, mm), design);
