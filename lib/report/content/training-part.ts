import type { QuestionAnswers } from '@/lib/analysis/programme/read-answers';
import type { TrainingsInPeriod } from '@/lib/analysis/programme/read-trainings';
import type { FunderReportContent } from './funder-report';
import { headsOf } from './heads-of';
import type { ProtectionRule } from './protect-cells';

type Told = NonNullable<FunderReportContent['trainings']>;

function answersRow(question: QuestionAnswers, { minSites }: ProtectionRule): Told['answers'][number] {
  const { wording, scaleMost, leastLabel, mostLabel, nBefore, nAfter } = question;
  const { meanBefore, meanAfter, change } = question;
  const few = (answers: number) => answers > 0 && answers < minSites;
  return {
    ...{ wording, scaleMost, leastLabel, mostLabel },
    answers:
      few(nBefore) || few(nAfter)
        ? { kind: 'protected' }
        : { kind: 'shown', nBefore, nAfter, meanBefore, meanAfter, change },
  };
}

/** Trainings, attendances, people each once, and the means of their answers. */
export function trainingsTold(
  trainings: TrainingsInPeriod,
  answers: readonly QuestionAnswers[],
  rule: ProtectionRule,
): Told {
  const people = headsOf(trainings.people, rule);
  const attendances = headsOf(trainings.attendances, rule);
  return {
    trainings: trainings.trainings,
    attendances,
    people,
    unnamedHeads: headsOf(trainings.unnamedHeads, rule),
    leftOutWithoutConsent: trainings.leftOutWithoutConsent,
    answers: answers.map((question) => answersRow(question, rule)),
  };
}
