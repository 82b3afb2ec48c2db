import * as v from 'valibot';
import { PLAIN } from '../../../store/shapes/record-shapes.ts';

/** whatever could be kept can be read again */
export const text = v.pipe(v.string(), v.maxLength(PLAIN.text));
export const list = <T extends v.GenericSchema>(of: T) => v.pipe(v.array(of), v.maxLength(1000));
export const number = v.pipe(v.number(), v.finite());
