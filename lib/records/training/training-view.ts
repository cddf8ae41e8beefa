import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';

export const trainingInclude = {
  site: { select: { name: true } },
  questions: { where: { voidedAt: null }, orderBy: { id: 'asc' } },
  attendances: {
    where: { voidedAt: null },
    include: { participant: { include: { contact: { select: { name: true } } } } },
  },
} satisfies Prisma.TrainingInclude;

type Row = Prisma.TrainingGetPayload<{ include: typeof trainingInclude }>;

/**
 * A training as screens show it. `people` are those the reader may see by name; `named` counts everybody who is known
 * by a record of their own, `attendances` everybody in the room.
 */
export function trainingView(row: Row) {
  // A participant of a site out of the reader's sight, or one whose name was erased, is counted and not named.
  const people = row.attendances.flatMap(({ participant }) => {
    const name: string | null | undefined = participant?.contact?.name;
    return typeof name === 'string' ? [{ id: participant.id, name }] : [];
  });
  const named = row.attendances.length;
  return {
    id: row.id,
    revision: row.revision,
    siteId: row.siteId,
    siteName: row.site.name,
    heldOn: asCalendarDate(row.heldOn),
    title: row.title,
    topic: row.topic,
    place: row.place,
    minutes: row.minutes,
    headCount: row.headCount,
    note: row.note,
    people: people.sort((a, b) => a.name.localeCompare(b.name)),
    named,
    attendances: row.headCount ?? named,
    questions: row.questions.map((question) => ({
      wording: question.wording,
      scaleMost: question.scaleMost,
      leastLabel: question.leastLabel,
      mostLabel: question.mostLabel,
      before: question.beforeCounts,
      after: question.afterCounts,
    })),
    voided: row.voidedAt === null ? null : { reason: row.voidReason ?? '' },
  };
}

export type TrainingView = ReturnType<typeof trainingView>;
