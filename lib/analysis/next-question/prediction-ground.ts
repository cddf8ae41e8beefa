import type { ShownFigure } from '../shown-figure';
import { fewestOthers } from './fewest-others';

/**
 * What may be said of the records that a prediction was learned from, on a page that a site's members read: where enough other
 * sites stand behind them those of the network, else those of the site itself. Number, marks, what was left out and the rows
 * are always of the same batches. What is not told is marked, so that "0 batches" never stands beside an expectation
 * unexplained. No sums of the network, since a site that takes off its own would read the others'; how many batches were
 * left out is of as many sites as those that count, and more.
 */
export function predictionGround(network: ShownFigure, own: ShownFigure): ShownFigure {
  const others = network.n.sites - (own.n.sites > 0 ? 1 : 0);
  const untold = others > 0 && others < fewestOthers;
  const counted = untold ? own : network;
  const marks = untold ? [...own.marks, 'others-untold' as const] : network.marks;
  return counted.kind === 'cannot'
    ? { ...counted, marks }
    : { ...counted, marks, parts: { ...counted.parts, numerator: 0, denominator: 0 } };
}
