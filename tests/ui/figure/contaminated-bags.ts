import type { FigureHistory, ShownFigure } from '@/lib/analysis/shown-figure';

export const contaminationHistory: FigureHistory = {
  unit: 'percent',
  n: { batches: 12, units: 240, runs: 6, sites: 1 },
  parts: { numerator: 30, denominator: 240, unit: 'units' },
  method: {
    code: 'clustered-proportion',
    source: 'Cochran (1977) Sampling Techniques, 3rd edition, section 3.12',
    clusteredBy: 'treatment-run',
  },
  marks: ['few-batches'],
  leftOut: [{ reason: 'not-inspected', batches: 2, units: 40 }],
  asOf: '2026-07-05T01:30:00.000Z',
  rowsQuery: 'method=hot_water_bath',
};

/** 30 of 240 bags, 12.5 % (8.1-18.3). */
export const contaminatedBags: ShownFigure = {
  ...contaminationHistory,
  kind: 'figure',
  value: 12.5,
  interval: { kind: 'interval', low: 8.06, high: 18.34, level: 0.95, method: 't' },
};
