import type { RandomTerm } from '../../lib/stats/mixed/design/fixed-term';
import type { LargeNetwork } from './large-network';

export type LargeModel = {
  readonly name: string;
  readonly response: 'contamination' | 'efficiency';
  readonly random: readonly (keyof LargeNetwork)[];
  /** The bars. */
  readonly seconds: number;
  readonly megabytes: number;
};

/** Without and with treatment runs, site x method and batches. */
export const LARGE_MODELS: readonly LargeModel[] = [
  {
    name: 'efficiency: site, lot',
    response: 'efficiency',
    random: ['site', 'lot'],
    seconds: 5,
    megabytes: 500,
  },
  {
    name: 'contamination: site, lot',
    response: 'contamination',
    random: ['site', 'lot'],
    seconds: 5,
    megabytes: 500,
  },
  {
    name: 'contamination: site, lot, batch',
    response: 'contamination',
    random: ['site', 'lot', 'batch'],
    seconds: 5,
    megabytes: 500,
  },
  {
    name: 'efficiency: site, lot, site x method, run',
    response: 'efficiency',
    random: ['site', 'lot', 'siteMethod', 'run'],
    seconds: 20,
    megabytes: 500,
  },
  {
    name: 'contamination: site, lot, site x method, run, batch',
    response: 'contamination',
    random: ['site', 'lot', 'siteMethod', 'run', 'batch'],
    seconds: 20,
    megabytes: 500,
  },
];

export function randomTermsOf(model: LargeModel, network: LargeNetwork): RandomTerm[] {
  return model.random.map((name) => ({ name, values: network[name].map(String) }));
}
