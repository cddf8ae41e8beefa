import type { FunderReportContent, ReportHeads } from './funder-report';
import type { ProtectionRule } from './protect-cells';

type Trainings = NonNullable<FunderReportContent['trainings']>;
type Answers = Trainings['answers'][number]['answers'];

/** Numbers of people that a report tells of its trainings. */
export const trainingHeads = ['attendances', 'people', 'unnamedHeads'] as const;

/** Fewer than the fewest, and not nobody. */
const fewApart = (one: number, other: number, { minSites }: ProtectionRule) =>
  one !== other && Math.abs(one - other) < minSites;

/** Whether two numbers of people are so near that the difference is that of a few of them. */
export function headsTell(
  before: ReportHeads | number,
  now: ReportHeads | number,
  rule: ProtectionRule,
): boolean {
  const people = (heads: ReportHeads | number) =>
    typeof heads === 'number' ? heads : heads.kind === 'shown' ? heads.people : undefined;
  const [then, today] = [people(before), people(now)];
  return then !== undefined && today !== undefined && fewApart(then, today, rule);
}

/**
 * Two states of the answers to one question: a mean and its number give the sum of the answers, so that the difference
 * tells what was on a sheet that was added, or on one that was changed.
 */
function answersTell(before: Answers, now: Answers, rule: ProtectionRule): boolean {
  if (before.kind === 'protected' || now.kind === 'protected') return false;
  const sides = [
    [before.nBefore, now.nBefore, before.meanBefore, now.meanBefore],
    [before.nAfter, now.nAfter, before.meanAfter, now.meanAfter],
  ] as const;
  return sides.some(
    ([nThen, nNow, meanThen, meanNow]) =>
      fewApart(nThen, nNow, rule) || (nThen === nNow && meanThen !== meanNow),
  );
}

const sameQuestion = (one: Trainings['answers'][number], other: Trainings['answers'][number]) =>
  one.scaleMost === other.scaleMost &&
  one.wording.trim().toLowerCase() === other.wording.trim().toLowerCase();

/** People are counted, not summed by site: a change of a few of them is theirs. */
export function trainingsTell(
  before: Trainings | undefined,
  now: Trainings | undefined,
  rule: ProtectionRule,
): boolean {
  if (!before || !now) return false;
  return (
    trainingHeads.some((key) => headsTell(before[key], now[key], rule)) ||
    before.answers.some((then) =>
      now.answers.some(
        (today) => sameQuestion(then, today) && answersTell(then.answers, today.answers, rule),
      ),
    )
  );
}
