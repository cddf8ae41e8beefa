import { ArgumentError } from './outcome';

/**
 * The element at `index`, for index arithmetic that is known to stay inside the array.
 * A miss is a bug here and is thrown, so that no `undefined` can turn into NaN further on.
 */
export function elementAt<T>(values: ArrayLike<T>, index: number): T {
  const value = values[index];
  if (value === undefined) throw new ArgumentError('index', `${index} is outside 0 .. ${values.length - 1}`);
  return value;
}
