import { ArgumentError } from './outcome';

/** Throws unless `value` is a finite number. */
export function requireFinite(argument: string, value: number): void {
  if (!Number.isFinite(value)) throw new ArgumentError(argument, `must be a finite number, not ${value}`);
}

/** Throws unless `value` is finite and at least 0. */
export function requireNonNegative(argument: string, value: number): void {
  requireFinite(argument, value);
  if (value < 0) throw new ArgumentError(argument, `must be at least 0, not ${value}`);
}

/** Throws unless `value` is finite and above 0. */
export function requirePositive(argument: string, value: number): void {
  requireFinite(argument, value);
  if (value <= 0) throw new ArgumentError(argument, `must be above 0, not ${value}`);
}

/** Throws unless `value` is a whole number from 0 up to the largest a double holds exactly (2^53 - 1). */
export function requireCount(argument: string, value: number): void {
  if (!Number.isSafeInteger(value) || value < 0) {
    throw new ArgumentError(argument, `must be a whole number of at least 0, not ${value}`);
  }
}

/** Throws unless both are counts and there are no more events than trials. */
export function requireEventsOfTrials(
  eventsArgument: string,
  events: number,
  trialsArgument: string,
  trials: number,
): void {
  requireCount(eventsArgument, events);
  requireCount(trialsArgument, trials);
  if (events > trials) {
    throw new ArgumentError(eventsArgument, `${events} is more than ${trialsArgument} (${trials})`);
  }
}

/** Throws unless `value` is between 0 and 1, both allowed. */
export function requireProbability(argument: string, value: number): void {
  if (!(value >= 0 && value <= 1)) throw new ArgumentError(argument, `must be between 0 and 1, not ${value}`);
}

/** Throws unless `value` lies strictly between 0 and 1: confidence levels, significance levels, smoothing weights. */
export function requireOpenProbability(argument: string, value: number): void {
  if (!(value > 0 && value < 1)) {
    throw new ArgumentError(argument, `must lie between 0 and 1, not ${value}`);
  }
}
