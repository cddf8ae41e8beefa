import type { FindingAction } from '@/lib/database/generated/enums';

type Step = { readonly units: number; readonly action: FindingAction };

/** Each contaminated unit of a finding under the last thing done with it; later steps take over from earlier ones. */
export function lastActions(finding: Step, followUps: readonly Step[]): Step[] {
  const steps = [...followUps].reverse();
  const answer: Step[] = [];
  let left = finding.units;
  for (const { units, action } of steps) {
    const taken = Math.min(left, units);
    if (taken > 0) answer.push({ units: taken, action });
    left -= taken;
  }
  return left > 0 ? [...answer, { units: left, action: finding.action }] : answer;
}
