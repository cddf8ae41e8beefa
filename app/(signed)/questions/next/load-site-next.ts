import 'server-only';
import { after } from 'next/server';
import type { Actor } from '@/lib/access/actor';
import { networkReader } from '@/lib/access/network-reader';
import { readAs } from '@/lib/access/scoped-db';
import { parseQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import { readComparisonChoices } from '@/lib/analysis/comparison/comparison-choices';
import { knownChoice } from '@/lib/analysis/next-question/known-choice';
import type { NextAsked } from '@/lib/analysis/next-question/next-choice.input';
import { askSiteNext } from '@/lib/analysis/next-question/next-question';
import { readNextOptions } from '@/lib/analysis/next-question/read-next-options';
import { readShortMethods } from '@/lib/analysis/treatment-question/read-short-methods';

/** What the page of one site needs; undefined for a site that is closed or not the reader's. */
export async function loadSiteNext(actor: Actor, given: NextAsked, siteId: string) {
  const now = new Date();
  const { options, choices } = await readAs(actor, async (context) => ({
    options: await readNextOptions(context, siteId, now),
    choices: await readComparisonChoices(context, now),
  }));
  if (options === undefined) return undefined;
  const known = knownChoice(given, options);
  const { usable } = options.equipment;
  // The form posts all that is ticked; only what differs from the site's own is a choice.
  const same = known.methods?.length === usable.length && usable.every((one) => known.methods?.includes(one));
  const asked = { ...known, site: siteId, methods: same ? undefined : known.methods };
  const reader = await networkReader(actor);
  if (reader === undefined) return { options, choices, asked, known: 'no-reader' } as const;
  const question = { ...parseQuestion({}), ...(asked.container ? { container: asked.container } : {}) };
  const scope = await readAs(reader, (context) => readQuestionScope(context, question, now));
  if (scope === undefined) return { options, choices, asked, known: 'nothing' } as const;
  const answer = await askSiteNext(actor, reader, asked, options, scope, now);
  // The work goes on when the reader has left, so that the next one finds it done.
  if (answer.kind !== 'current') after(() => answer.next);
  const short = await readAs(actor, (context) => readShortMethods(context, siteId, scope.filter, now));
  return { options, choices, asked, known: { container: scope.filter.container, answer, short } };
}
