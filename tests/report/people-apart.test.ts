import { expect, it } from 'vitest';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { carryOver, tellsBeside } from '@/lib/report/content/carry-over';
import { practicePart } from '@/lib/report/content/practice-part';
import { rule } from './random-network';
import { evenYear, yearReport } from './year-report';

const shown = (people: number) => ({ kind: 'shown' as const, people });
const days = {
  year: { from: '2025-01-01', to: '2025-12-31' },
  eleven: { from: '2025-01-01', to: '2025-11-30' },
};
type Days = (typeof days)['year'];

const begun = (amount: number) => ({ key: 'total', kind: 'shown' as const, amount, sites: 7 });

function withPeople(period: Days, people: number, batches: number): BuiltReport {
  const { content, ground } = yearReport(2025, evenYear);
  const bySite = Object.fromEntries(Object.keys(evenYear).map((site) => [site, batches]));
  return {
    content: { ...content, ...period, peopleActive: shown(people), batchesStarted: begun(7 * batches) },
    ground: { ...ground, glance: { started: [{ key: 'started', bySite }] } },
  };
}

it('one person more in one more month is not told; the batches begun are', () => {
  const earlier = { ...withPeople(days.eleven, 40, 10), version: 1 };
  expect(tellsBeside(withPeople(days.year, 41, 20), [earlier])).toBe(true);
  const later = carryOver(withPeople(days.year, 41, 20), [earlier]);
  expect(later.content.peopleActive).toEqual({ kind: 'protected' });
  expect(later.content.batchesStarted).toEqual(begun(140));
  expect(later.content.keptBack).toEqual(['glance']);
  expect(tellsBeside(later, [earlier])).toBe(false);
  expect(carryOver(withPeople(days.year, 52, 20), [earlier]).content.peopleActive).toEqual(shown(52));
});

const answers = { wording: 'How sure?', scaleMost: 5, leastLabel: null, mostLabel: null };
const means = { meanBefore: 2, meanAfter: 4, change: 2 };

function withTrainings(period: Days, people: number, attendances: number, answered: number): BuiltReport {
  const { content, ground } = yearReport(2025, evenYear, undefined, ['trainings']);
  const trainings = {
    ...{ trainings: 3, leftOutWithoutConsent: 0, unnamedHeads: shown(20) },
    ...{ people: shown(people), attendances: shown(attendances) },
    answers: [
      { ...answers, answers: { kind: 'shown' as const, nBefore: answered, nAfter: answered, ...means } },
    ],
  };
  return { content: { ...content, ...period, trainings }, ground: { ...ground, trainings: {} } };
}

it('of trainings only the numbers that few people would follow from are kept back', () => {
  const earlier = { ...withTrainings(days.eleven, 30, 60, 25), version: 1 };
  const { trainings, keptBack } = carryOver(withTrainings(days.year, 32, 90, 40), [earlier]).content;
  expect(trainings).toMatchObject({ people: { kind: 'protected' }, attendances: shown(90) });
  expect(trainings?.answers[0]?.answers.kind).toBe('shown');
  expect(keptBack).toEqual(['trainings']);
  const sheet = carryOver(withTrainings(days.year, 60, 90, 26), [earlier]).content.trainings;
  expect(sheet).toMatchObject({ people: shown(60), answers: [{ answers: { kind: 'protected' } }] });
});

function withPractice(period: Days, sites: number): BuiltReport {
  const standingAt = Array.from({ length: sites }, (_, at) => `site ${at}`);
  const row = { practice: 'hygiene' as const, adoptedAt: [], standingAt, growers: 0, withoutGrowers: 0 };
  const told = practicePart([], [row], rule);
  const { content, ground } = yearReport(2025, evenYear, undefined, ['practices']);
  return {
    content: { ...content, ...period, ...told.content },
    ground: { ...ground, practices: told.ground },
  };
}

it('at how many sites a practice stands is told year by year, and withheld where the days are shared', () => {
  const earlier = { ...withPractice(days.year, 6), version: 1 };
  const next = { from: '2026-01-01', to: '2026-12-31' };
  const shared = { from: '2025-07-01', to: '2026-06-30' };
  expect(carryOver(withPractice(next, 7), [earlier]).content.adopted[0]?.standing).toMatchObject({
    amount: 7,
  });
  expect(carryOver(withPractice(shared, 7), [earlier]).content.adopted[0]?.standing.kind).toBe('protected');
});
