import { benchModels, fitter } from './bench-models';
import { timeInR } from './time-in-r';

/** How many times faster than lme4, and how much worse a -2 log-likelihood may be. */
const FASTER = 5;
const WORSE = 1e-6;
const ROUNDS = 5;
const WARM_SECONDS = 1.5;

/** Median seconds of a fit over a few rounds, short fits repeated within a round; after a warm-up. */
function medianSeconds(run: () => unknown): number {
  const once = () => {
    const start = performance.now();
    run();
    return (performance.now() - start) / 1000;
  };
  // Long enough for the compiler to have seen all of it.
  for (let warm = 0; warm < WARM_SECONDS; ) warm += once();
  const repeats = once() < 0.05 ? 20 : 1;
  const rounds = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    for (let repeat = 0; repeat < repeats; repeat++) run();
    return (performance.now() - start) / 1000 / repeats;
  });
  return rounds.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? Number.NaN;
}

/** Our models beside lme4's on the same data, in one run. True when every bar is met (or R is absent). */
export function benchSmall(): boolean {
  const models = benchModels();
  const own = models.map((model) => {
    const run = fitter(model);
    return { seconds: medianSeconds(run), value: run().minusTwoLogLikelihood };
  });
  const inR = timeInR(models);
  if (inR === undefined) {
    console.log('Rscript with lme4 is not installed: no comparison (Debian: apt-get install r-cran-lme4).');
  } else {
    console.log(`Beside lme4 ${inR.lme4} on ${inR.version}, median of ${ROUNDS} rounds, design included:`);
  }
  let within = true;
  models.forEach(({ name }, index) => {
    const ours = own[index];
    const theirs = inR?.models.get(name);
    if (!ours) return;
    const line = `  ${name.padEnd(30)}${(1000 * ours.seconds).toFixed(2).padStart(9)} ms`;
    if (!theirs) {
      console.log(line);
      return;
    }
    const ratio = theirs.seconds / ours.seconds;
    const difference = ours.value - theirs.value;
    const met = ratio >= FASTER && difference < WORSE;
    within &&= met;
    console.log(
      `${line}   R ${(1000 * theirs.seconds).toFixed(1).padStart(8)} ms   ${ratio.toFixed(1).padStart(6)} x   ` +
        `-2 log L ${difference <= 0 ? '' : '+'}${difference.toExponential(1)}   ${met ? 'met' : 'NOT MET'}`,
    );
  });
  return within;
}
