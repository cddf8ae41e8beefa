import { benchLarge } from './bench-large';
import { benchSmall } from './bench-small';

/** Prints all timings of the statistics; true when every bar is met. */
export function benchStatistics(part: 'small' | 'large' | undefined): boolean {
  const small = part === 'large' || benchSmall();
  const large = part === 'small' || benchLarge();
  return small && large;
}
