import type { FigureUnit, LeftOut, ShownFigure } from '../shown-figure';
import { amountsBySite, type FigureBySite, type SiteAmount } from './by-site-amounts';

type Summed = {
  readonly unit: Extract<FigureUnit, 'kilograms' | 'people' | 'sites'>;
  /** Grams for kilograms, otherwise the things counted; a site may come several times. */
  readonly amounts: readonly SiteAmount[];
  readonly batches: number;
  readonly leftOut?: readonly LeftOut[];
  readonly asOf: string;
};

/** A plain sum over everything recorded: it has no interval, since nothing was sampled. */
export function sumFigure({ unit, amounts, batches, leftOut = [], asOf }: Summed): FigureBySite {
  const bySite = amountsBySite(amounts);
  const total = bySite.reduce((sum, { amount }) => sum + amount, 0);
  const figure: ShownFigure = {
    kind: 'figure',
    unit,
    value: unit === 'kilograms' ? total / 1000 : total,
    interval: { kind: 'none', reason: 'complete-count' },
    n: { batches, units: 0, runs: 0, sites: bySite.length },
    parts: { numerator: total, denominator: 1, unit: unit === 'kilograms' ? 'grams' : 'units' },
    method: { code: 'sum', source: '', clusteredBy: 'nothing' },
    marks: [],
    leftOut,
    asOf,
    rowsQuery: '',
  };
  return { figure, bySite };
}
