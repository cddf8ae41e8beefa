/**
 * Where the bounds of a rate lie to the rate that is counted. Above it where more was found in batches that nobody looked at later
 * than the rate says of the others.
 */
export function sideOfCounted({
  counted,
  low,
}: {
  readonly counted: number;
  readonly low: number;
}): 'above' | 'around' {
  return counted < low ? 'above' : 'around';
}
