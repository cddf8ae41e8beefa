import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { ReportWords } from './report-words';
import type { writeWordsInput } from './write-words.input';

/** Changes the words of a report that is not published. Its figures come from the records and cannot be typed over. */
export async function writeWords(
  { db, actor }: WriteContext,
  input: z.output<typeof writeWordsInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { id, revision, title } = input;
  const words: ReportWords = Object.fromEntries(
    Object.entries(input.words).filter((entry): entry is [string, string] => entry[1] !== null),
  );
  const { count } = await db.report.updateMany({
    where: { id, revision, voidedAt: null, publishedAt: null },
    data: { title, words },
  });
  if (count === 1) return ok({ id });
  const there = await db.report.findFirst({ where: { id, voidedAt: null, publishedAt: null } });
  return there ? { kind: 'conflict', current: there.revision } : notFound;
}
