/** What the drafts ask of a silhouette. */
export interface SilhouetteFacts {
  /** its lower edge is as wide as the hip; else as the underarm */
  readonly followsHip: boolean;
  /** it is drawn in at the waist */
  readonly hasWaist: boolean;
}

const table = {
  straight: { followsHip: false, hasWaist: false },
  tapered: { followsHip: true, hasWaist: false },
  waist: { followsHip: true, hasWaist: true },
} as const satisfies Readonly<Record<string, SilhouetteFacts>>;

export type Silhouette = keyof typeof table;
export const silhouetteFacts: Readonly<Record<Silhouette, SilhouetteFacts>> = table;
export const silhouettes = Object.keys(table) as readonly Silhouette[];
