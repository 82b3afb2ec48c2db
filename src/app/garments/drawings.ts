import { signal } from '@preact/signals';
import type { GarmentView } from '../state.ts';

/** drawings of the workbasket, by garment id, read when they come into sight */
export const drawings = signal<ReadonlyMap<string, GarmentView>>(new Map());
