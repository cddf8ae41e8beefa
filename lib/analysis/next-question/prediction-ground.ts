import type { ShownFigure } from '../shown-figure';
import { fewestOthers } from './fewest-others';

/**
 * What may be said of the records that a prediction was learned from, on a page that a site's members read: how many there are
 * in the network, where enough other sites stand behind them, else how many the site itself has; and what was left out of
 * the site's own. What is not told is
 * marked, so that "0 batches" never stands beside an expectation unexplained. No sums of the network, since a site that takes off its own would read the others'.
 */
export function predictionGround(network: ShownFigure, own: ShownFigure): ShownFigure {
  const others = network.n.sites - (own.n.sites > 0 ? 1 : 0);
  const untold = others > 0 && others < fewestOthers;
  const about = {
    n: untold ? own.n : network.n,
    marks: untold ? [...network.marks, 'others-untold' as const] : network.marks,
    leftOut: own.leftOut,
  };
  return network.kind === 'cannot'
    ? { ...network, ...about }
    : { ...network, ...about, parts: { ...network.parts, numerator: 0, denominator: 0 } };
}
