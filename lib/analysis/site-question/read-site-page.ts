import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { parseQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionScope } from '../adjusted/read-question-data';
import type { StoredResult } from '../fitted/stored-result';
import type { SitePart } from './sites-answer';
import { readSitePart } from './sites-question';

export type SitePage = QuestionScope & {
  readonly siteId: string;
  /** Undefined until the coordinator has asked the question. */
  readonly stored: StoredResult<SitePart> | undefined;
};

/** A site's own page, with the answer last worked out; undefined for a site that is not there or not the reader's. */
export async function readSitePage(
  context: ReadContext,
  id: string,
  now: Date,
): Promise<SitePage | undefined> {
  const { role, siteIds } = context.actor;
  if (!z.uuid().safeParse(id).success || (role === 'member' && !siteIds.includes(id))) return undefined;
  const asked = parseQuestion({});
  const scope = await readQuestionScope(context, asked, now);
  if (!scope?.choices.sites.some((site) => site.id === id)) return undefined;
  return { ...scope, siteId: id, stored: await readSitePart(context, asked, id) };
}
