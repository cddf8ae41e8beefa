/**
 * Both tails of a distribution at one point, with their logarithms. Whichever tail is small keeps full relative
 * accuracy, and its logarithm stays finite where the probability underflows to 0.
 */
export type Tails = {
  readonly lower: number;
  readonly upper: number;
  readonly logLower: number;
  readonly logUpper: number;
};

export const ALL_BELOW: Tails = { lower: 1, upper: 0, logLower: 0, logUpper: Number.NEGATIVE_INFINITY };
export const ALL_ABOVE: Tails = { lower: 0, upper: 1, logLower: Number.NEGATIVE_INFINITY, logUpper: 0 };

export function tailsFromLogLower(logLower: number): Tails {
  const atMostOne = Math.min(logLower, 0);
  const lower = Math.exp(atMostOne);
  const upper = -Math.expm1(atMostOne);
  return { lower, upper, logLower: atMostOne, logUpper: logOfComplement(atMostOne, lower, upper) };
}

export function tailsFromLogUpper(logUpper: number): Tails {
  return flip(tailsFromLogLower(logUpper));
}

/** The tails of the mirrored variable. */
export function flip(tails: Tails): Tails {
  return {
    lower: tails.upper,
    upper: tails.lower,
    logLower: tails.logUpper,
    logUpper: tails.logLower,
  };
}

function logOfComplement(logTail: number, tail: number, complement: number): number {
  return logTail > -Math.LN2 ? Math.log(complement) : Math.log1p(-tail);
}
