/** Why a growing figure cannot be given. Codes are stable; screens translate them and fill in the values. */
export type CannotReason =
  | 'out-of-range'
  | 'fresh-mass-missing'
  | 'wet-mass-missing'
  | 'mass-before-treatment-missing'
  | 'moisture-missing'
  | 'dry-mass-missing'
  | 'dry-mass-zero'
  | 'no-components'
  | 'already-wetter'
  | 'log-wood-unknown'
  | 'log-size-missing'
  | 'log-not-finished'
  | 'beds-have-no-be'
  | 'area-missing'
  | 'days-not-positive'
  | 'less-than-a-year'
  | 'no-harvest-yet'
  | 'no-inoculated-units'
  | 'more-than-inoculated'
  | 'no-baseline'
  | 'spawn-missing'
  | 'substrate-missing'
  | 'outside-table'
  | 'no-readings'
  | 'not-enough-readings'
  | 'no-load-readings'
  | 'gap-in-readings'
  | 'end-before-start';

/** A figure the records cannot give, with the reason and the numbers a reader needs to act on it. */
export type CannotCompute = {
  readonly kind: 'cannot-compute';
  readonly reason: CannotReason;
  readonly values: Readonly<Record<string, number | string>>;
};

/** A figure, or why there is none. Never NaN, Infinity, null or a silent 0. */
export type Answer<T> = { readonly kind: 'value'; readonly value: T } | CannotCompute;

export function answer<T>(value: T): Answer<T> {
  return { kind: 'value', value };
}

export function cannotCompute(
  reason: CannotReason,
  values: Readonly<Record<string, number | string>> = {},
): CannotCompute {
  return { kind: 'cannot-compute', reason, values };
}
