import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Period } from '../production/read-production';
import { type QuestionAnswers, readAnswers } from './read-answers';
import { type PracticeInPeriod, readPractices } from './read-practices';
import { type CurrencyTotal, readSales, totalByCurrency } from './read-sales';
import { readTrainings, type TrainingsInPeriod } from './read-trainings';

/** What a programme did in a period, as far as the actor may see its sites. */
export type ProgrammeInPeriod = {
  readonly trainings: TrainingsInPeriod;
  readonly answers: readonly QuestionAnswers[];
  readonly sales: readonly CurrencyTotal[];
  readonly practices: readonly PracticeInPeriod[];
};

export async function readProgramme(context: ReadContext, period: Period): Promise<ProgrammeInPeriod> {
  return {
    trainings: await readTrainings(context, period),
    answers: await readAnswers(context, period),
    sales: totalByCurrency(await readSales(context, period)),
    practices: await readPractices(context, period),
  };
}
