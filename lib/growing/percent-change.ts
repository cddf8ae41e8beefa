import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';

/**
 * Change in percent: 100 (final - initial) / initial, the formula of US local food promotion grants.
 * 200 to 260 is 30, 200 to 150 is -25; an initial 0 has no baseline.
 */
export function percentChange(initial: number, final: number): Answer<number> {
  const refused = refuseNegative({ initial, final });
  if (refused) return refused;
  return initial === 0
    ? cannotCompute('no-baseline', { final })
    : answer((100 * (final - initial)) / initial);
}
