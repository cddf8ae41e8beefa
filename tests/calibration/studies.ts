import { alarmCalibration } from './alarm-calibration';
import { clusteredProportionCalibration } from './clustered-proportion-calibration';
import { multiplicityLevels, observedExpectedCoverage } from './count-calibration';
import { funnelCalibration } from './funnel-calibration';
import { incidenceCalibration } from './incidence-calibration';
import { logRankCalibration } from './log-rank-calibration';
import { lotCalibration } from './lot-calibration';
import { coverageTables, levelTable } from './markdown-tables';
import { mixedCalibration } from './mixed-calibration';
import { nextCalibration } from './next-calibration';
import { originCalibration } from './origin-calibration';
import { planningCalibration } from './planning-calibration';
import { poolingCalibration } from './pooling-calibration';
import { differenceCoverage, proportionCoverage } from './proportion-calibration';
import { ratioCalibration } from './ratio-calibration';
import { shareCalibration } from './share-calibration';
import { stratifiedCoverage, stratifiedLevels } from './stratified-calibration';

/** A part of the calibration; `run` gives its tables. `scaled` is the number of data sets asked for, or fewer. */
export type Study = {
  readonly name: string;
  readonly run: (scaled: (replicates: number) => number) => string | Promise<string>;
};

/** In the order in which they are printed. */
export const studies: readonly Study[] = [
  {
    name: 'proportion',
    run: () =>
      levelTable('Proportions of independent units (enumerated)', [
        ...proportionCoverage(),
        ...differenceCoverage(),
      ]),
  },
  { name: 'clustered', run: (scaled) => coverageTables(clusteredProportionCalibration(scaled(1000))) },
  {
    name: 'ratio',
    run: (scaled) => levelTable('Biological efficiency of clustered batches', ratioCalibration(scaled(4000))),
  },
  { name: 'stratified', run: (scaled) => coverageTables(stratifiedCoverage(scaled(2000))) },
  {
    name: 'stratified-tests',
    run: (scaled) => levelTable('Tests over strata of independent units', stratifiedLevels(scaled(2000))),
  },
  { name: 'incidence', run: (scaled) => coverageTables(incidenceCalibration(scaled(1000))) },
  {
    name: 'log-rank',
    run: (scaled) => levelTable('Log-rank test of runs that do not differ', logRankCalibration(scaled(1000))),
  },
  {
    name: 'mixed',
    run: (scaled) => levelTable('Mixed models with few and many sites', mixedCalibration(scaled(300))),
  },
  { name: 'pooling', run: (scaled) => levelTable('Pooling of sites', poolingCalibration(scaled(600))) },
  {
    name: 'counts',
    run: (scaled) =>
      levelTable('Counts against expectation (enumerated), many comparisons', [
        ...observedExpectedCoverage(),
        ...multiplicityLevels(scaled(4000)),
      ]),
  },
  {
    name: 'funnel',
    run: (scaled) =>
      levelTable('Funnel of sites that differ by their usual spread only', funnelCalibration(scaled(500))),
  },
  {
    name: 'lots',
    run: async (scaled) =>
      levelTable('Lots, makers and sources of simulated networks of 12 and 14 sites', [
        ...(await lotCalibration(scaled(200))),
        ...(await originCalibration(scaled(200))),
      ]),
  },
  {
    name: 'shares',
    run: async (scaled) =>
      levelTable(
        'Shares of site, lot and run in what batches differ by',
        await shareCalibration(scaled(200)),
      ),
  },
  {
    name: 'next',
    run: async (scaled) =>
      levelTable('The next batch of a site, in simulated networks', await nextCalibration(scaled(60))),
  },
  {
    name: 'alarms',
    run: (scaled) => levelTable('Alarms of an unchanged process', alarmCalibration(scaled(1000))),
  },
  {
    name: 'planning',
    run: (scaled) => levelTable('Power of planned sizes', planningCalibration(scaled(4000))),
  },
];
