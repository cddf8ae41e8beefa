import { logistic } from '@/lib/stats/mixed/binomial/marginal-probability';
import { type Compared, chooseNext } from './choose-next';
import type { NextVerdict, Teaching } from './next-answer';
import type { Cell, Predicted } from './predict-cells';
import { type Spread, spreadOf, whatTeaches } from './what-teaches';

/** What is expected of methods at one site, with what single batches vary by: all that a choice among them needs. */
export type Joint = Compared & { readonly spread: Spread };

export function jointOf(predicted: Predicted | undefined, cell: Cell, by: 'yield' | 'loss'): Joint[] {
  const together = predicted?.together(cell);
  return predicted && together ? [{ ...together, by, spread: spreadOf(predicted.fit) }] : [];
}

/**
 * Which of the methods does best, and which would teach most. Yield decides, since it holds losses too; where no yield can be
 * worked out, losses do.
 *
 * @param joints of yield first. @param units of the batch that is looked forward to.
 */
export function settleChoice(
  joints: readonly Joint[],
  methods: readonly string[],
  units: number,
): { readonly verdict: NextVerdict; readonly teaching: Teaching } {
  const joint = joints
    .map((one) => among(one, methods))
    .find(({ expected }) => expected.estimates.some((value) => typeof value === 'number'));
  if (joint === undefined)
    return {
      verdict: { kind: 'cannot', reason: methods.length === 0 ? 'no-method' : 'too-thin' },
      teaching: { kind: 'none', reason: methods.length === 0 ? 'no-method' : 'too-thin' },
    };
  const verdict = chooseNext(joint);
  const { spread, by } = joint;
  const scales = by === 'yield' ? { scale: 1, unitsNoise: 0 } : ofLoss(joint, units);
  return { verdict, teaching: whatTeaches(joint, verdict, { spread, ...scales }) };
}

/** The part of what is expected that is about these methods. */
function among(joint: Joint, methods: readonly string[]): Joint {
  const places = joint.methods.flatMap((method, at) => (methods.includes(method) ? [at] : []));
  const pick = <T>(values: readonly T[]) => places.map((at) => values[at] as T);
  const { estimates, covariance, degreesOfFreedom } = joint.expected;
  return {
    ...joint,
    methods: pick(joint.methods),
    expected: {
      estimates: pick(estimates),
      covariance: pick(covariance).map(pick),
      degreesOfFreedom: pick(degreesOfFreedom).map(pick),
    },
  };
}

/** Log odds as points in 100 at the middle of what is compared, and the chance of single units there. */
function ofLoss({ expected }: Compared, units: number) {
  const logits = expected.estimates.filter((value) => typeof value === 'number');
  const share = logistic(logits.reduce((sum, value) => sum + value, 0) / Math.max(1, logits.length));
  const slope = Math.max(share * (1 - share), 1e-6);
  return { scale: 100 * slope, unitsNoise: 1 / (units * slope) };
}
