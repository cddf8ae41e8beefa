import 'server-only';
import { after } from 'next/server';
import type { Actor } from '@/lib/access/actor';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import {
  type AskedQuestion,
  dayProblemsOfQuestion,
  parseQuestion,
} from '@/lib/analysis/adjusted/question-scope.input';
import { type QuestionScope, readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import type { FittedAnswer } from '@/lib/analysis/fitted/fitted-answer';

type Ask<Answer> = (
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
) => Promise<FittedAnswer<Answer>>;

/** What a page of a question needs: who asks what, of which batches, and the answer as far as it is known. */
export async function loadQuestion<Answer>(
  searchParams: Promise<Record<string, string | string[] | undefined>>,
  ask: Ask<Answer>,
) {
  const actor = await requireActor('coordinator');
  const address = await searchParams;
  const asked = parseQuestion(address);
  const now = new Date();
  const scope = await readAs(actor, (context) => readQuestionScope(context, asked, now));
  const about = { actor, asked, address, now };
  if (!scope) return { ...about, problems: [], known: undefined };
  const answer = await ask(actor, asked, scope, now);
  // The work goes on when the reader has left, so that the next one finds it done.
  if (answer.kind !== 'current') after(() => answer.next);
  const problems = dayProblemsOfQuestion(address, scope.choices.defaults);
  return { ...about, problems, known: { scope, answer } };
}
