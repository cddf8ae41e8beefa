import { ArgumentError } from '../outcome';

/** Throws for NaN; a point of the real line or either infinity passes. */
export function requireNumber(argument: string, value: number): void {
  if (typeof value !== 'number' || Number.isNaN(value)) throw new ArgumentError(argument, 'must be a number');
}

/** Throws unless `value` is above 0; Infinity passes. */
export function requireDegreesOfFreedom(argument: string, value: number): void {
  if (!(value > 0)) throw new ArgumentError(argument, `must be above 0, not ${value}`);
}
