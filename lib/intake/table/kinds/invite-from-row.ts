import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, type Question, type Result } from '@/lib/base/result';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import type { invitePersonInput } from '@/lib/records/person/invite-person.input';

type Input = z.output<typeof invitePersonInput>;

/** What is asked before somebody is invited by a table: rights over all records, and a name that is invited already. */
async function unasked({ db, confirmed }: WriteContext, input: Input): Promise<Question[]> {
  const questions: Question[] = [];
  if (input.role === 'coordinator') questions.push({ field: 'role', code: 'intake-coordinator' });
  const sameName = await db.invitation.findFirst({
    where: { forName: input.forName, forEmail: null, acceptedAt: null, voidedAt: null },
    select: { id: true },
  });
  if (sameName !== null) questions.push({ field: 'forName', code: 'intake-name-invited' });
  return questions.filter(({ code }) => !confirmed.has(code));
}

/** Invites whoever a row names, as the form does; the link is made when somebody hands it over. */
export async function inviteFromRow(context: WriteContext, input: Input): Promise<Result<{ id: string }>> {
  if (input.forName === null) return invalid('forName', 'missing');
  if (input.forEmail === null) return invalid('forEmail', 'missing');
  const questions = await unasked(context, input);
  if (questions.length > 0) return { kind: 'confirm', questions };
  return invitePerson(context, input);
}
