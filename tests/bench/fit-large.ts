/** Fits one of the large models, named on the command line; prints seconds, processor seconds, peak megabytes, evaluations, -2 log L. */
import { fitBinomialMixed } from '../../lib/stats/mixed/binomial/fit-binomial';
import { fitLinearMixed } from '../../lib/stats/mixed/linear/fit-linear';
import { estimated } from '../reference/mixed/mixed-case';
import { LARGE_MODELS, randomTermsOf } from './large-models';
import { simulateLargeNetwork } from './large-network';

const model = LARGE_MODELS.find(({ name }) => name === process.argv[2]);
if (!model) throw new Error(`no such model: ${process.argv[2]}`);
const network = simulateLargeNetwork({ batches: 100_000, sites: 200, lots: 2_000, runs: 30_000 }, 1);
const fixed = [{ kind: 'factor' as const, name: 'method', values: network.method }];
const random = randomTermsOf(model, network);
const start = performance.now();
const before = process.cpuUsage();
const fit = estimated(
  model.response === 'efficiency'
    ? fitLinearMixed({ response: network.logBe, fixed, random })
    : fitBinomialMixed({ events: network.contaminated, trials: network.units, fixed, random }),
);
const seconds = (performance.now() - start) / 1000;
const { user, system } = process.cpuUsage(before);
const megabytes = process.resourceUsage().maxRSS / 1024;
console.log(
  [seconds, (user + system) / 1e6, megabytes, fit.evaluations, fit.minusTwoLogLikelihood].join('\t'),
);
