import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { addDays } from '@/lib/growing/calendar-date';
import { asDate } from '@/lib/records/fields/stored-date';
import { addParticipant } from '@/lib/records/participant/add-participant.command';
import { addParticipantInput } from '@/lib/records/participant/participant.input';
import { recordPracticeInput } from '@/lib/records/practice/practice.input';
import { recordPractice } from '@/lib/records/practice/record-practice.command';
import { recordSale } from '@/lib/records/sale/record-sale.command';
import { recordSaleInput } from '@/lib/records/sale/sale.input';
import { recordTraining } from '@/lib/records/training/record-training.command';
import { recordTrainingInput } from '@/lib/records/training/training.input';
import {
  storyOutlets,
  storyParticipants,
  storyPractices,
  storyQuestion,
  storyTrainings,
} from '../story/programme';
import { inOneGo, type Take } from './in-one-go';

const months = 14;
const soldShare = 0.4;

/** What a site weighed in each of the last months, by the first day of the month's sales. */
function monthlyHarvest(coordinator: Actor, siteId: string, today: string) {
  return readAs(coordinator, async ({ db }) => {
    const harvests: { soldOn: string; grams: number }[] = [];
    for (let ago = 1; ago <= months; ago += 1) {
      const from = addDays(today, -30 * ago);
      const to = addDays(from, 29);
      const { _sum } = await db.weighing.aggregate({
        where: { siteId, voidedAt: null, weighedOn: { gte: asDate(from), lte: asDate(to) } },
        _sum: { freshGrams: true },
      });
      harvests.push({ soldOn: to, grams: _sum.freshGrams ?? 0 });
    }
    return harvests;
  });
}

/** Records trainings, participants, sales and practices of the story, all by the coordinator. */
export async function recordProgramme(
  coordinator: Actor,
  siteIds: ReadonlyMap<string, string>,
  today: string,
): Promise<void> {
  const idOf = (code: string) => siteIds.get(code) ?? '';
  const sales = await Promise.all(
    storyOutlets.map(async (one) => ({
      ...one,
      sold: await monthlyHarvest(coordinator, idOf(one.siteCode), today),
    })),
  );
  await inOneGo(coordinator, async (take) => {
    await recordTrainings(take, idOf, today);
    for (const { siteCode, practice, ago, growers } of storyPractices)
      await take(recordPracticeInput, recordPractice, {
        ...{ siteId: idOf(siteCode), practice, since: addDays(today, -ago), growers: growers ?? '' },
      });
    for (const { siteCode, outlet, centsPerKg, sold } of sales)
      for (const { soldOn, grams } of sold) {
        const mass = Math.round((grams * soldShare) / 100) * 100;
        if (mass > 0)
          await take(recordSaleInput, recordSale, {
            ...{ siteId: idOf(siteCode), soldOn, outlet, mass },
            amount: Math.round((mass * centsPerKg) / 1000) / 100,
          });
      }
  });
}

async function recordTrainings(take: Take, idOf: (code: string) => string, today: string): Promise<void> {
  const people: string[] = [];
  for (const { siteCode, name, consents } of storyParticipants)
    people.push(
      (
        await take(addParticipantInput, addParticipant, {
          siteId: idOf(siteCode),
          ...{ name, consents: [...consents], agreedOn: addDays(today, -420) },
        })
      ).id,
    );
  for (const { siteCode, ago, heads, came, before, after, title, topic, minutes } of storyTrainings)
    await take(recordTrainingInput, recordTraining, {
      siteId: idOf(siteCode),
      heldOn: addDays(today, -ago),
      ...{ title, topic, minutes, headCount: heads ?? '' },
      participants: came.map((place) => people[place]),
      questions: before === '' ? [] : [{ ...storyQuestion, before, after }],
    });
}
