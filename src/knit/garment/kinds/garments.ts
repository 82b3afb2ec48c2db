/** What the drafts ask of a kind of garment. */
export interface GarmentFacts {
  /** its front is opened from the hem to the neck */
  readonly open: boolean;
  readonly sleeves: boolean;
}

const table = {
  pullover: { open: false, sleeves: true },
  cardigan: { open: true, sleeves: true },
  vest: { open: false, sleeves: false },
  'buttoned vest': { open: true, sleeves: false },
} as const satisfies Readonly<Record<string, GarmentFacts>>;

export type GarmentKind = keyof typeof table;
export const garmentKinds: Readonly<Record<GarmentKind, GarmentFacts>> = table;
