import type { Route } from 'next';
import Link from 'next/link';
import { after } from 'next/server';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { parseQuestion, queryOfQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import { askSites } from '@/lib/analysis/site-question/sites-question';
import { scopeSentence } from '@/lib/ui/comparison/scope-sentence';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { FittedBlock } from '@/lib/ui/insight/fitted-block';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { questionFields, questionValues } from '@/lib/ui/insight/question-fields';
import { SitesAnswerView } from '@/lib/ui/insight/sites-answer-view';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';

export default async function SitesQuestionPage({ searchParams }: PageProps<'/questions/sites'>) {
  const actor = await requireActor('coordinator');
  const asked = parseQuestion(await searchParams);
  const now = new Date();
  const scope = await readAs(actor, (context) => readQuestionScope(context, asked, now));
  const t = await getTranslations('insight');
  if (!scope) {
    return (
      <>
        <Heading text={t('sites.heading')} />
        <EmptyState text={t('fit.empty')} />
      </>
    );
  }
  const answer = await askSites(actor, asked, scope, now);
  if (answer.kind !== 'current') after(() => answer.next);
  const words = await insightWords(actor, scope);
  const fields = await questionFields(scope.choices, actor.language);
  return (
    <>
      <Heading text={t('sites.heading')} />
      <p className="lead">{await scopeSentence(scope, actor.language, await getLocale())}</p>
      <FilterForm
        action={'/questions/sites' as Route}
        fields={fields.filter(({ name }) => name !== 'level')}
        values={questionValues(scope.filter, asked.level)}
        chips={[]}
      />
      <FittedBlock answer={answer} timeZone={actor.networkTimeZone}>
        {(result) => <SitesAnswerView answer={result} words={words} />}
      </FittedBlock>
      <p className="no-print">
        <Link href={`/questions/sites?${queryOfQuestion({ ...asked, ...scope.filter })}` as Route}>
          {t('fit.reproduce')}
        </Link>
      </p>
    </>
  );
}
