import type { Route } from 'next';
import Link from 'next/link';
import { after } from 'next/server';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { parseQuestion, queryOfQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import { askMethods } from '@/lib/analysis/method-question/methods-question';
import { readRawMethods } from '@/lib/analysis/method-question/read-raw-methods';
import { scopeSentence } from '@/lib/ui/comparison/scope-sentence';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { FittedBlock } from '@/lib/ui/insight/fitted-block';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { MethodsAnswerView } from '@/lib/ui/insight/methods-answer-view';
import { questionFields, questionValues } from '@/lib/ui/insight/question-fields';
import { RawMethods } from '@/lib/ui/insight/raw-methods';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';

export default async function MethodsPage({ searchParams }: PageProps<'/questions/methods'>) {
  const actor = await requireActor('coordinator');
  const asked = parseQuestion(await searchParams);
  const now = new Date();
  const scope = await readAs(actor, (context) => readQuestionScope(context, asked, now));
  const t = await getTranslations('insight');
  if (!scope) {
    return (
      <>
        <Heading text={t('methods.heading')} />
        <EmptyState text={t('fit.empty')} />
      </>
    );
  }
  const answer = await askMethods(actor, asked, scope, now);
  if (answer.kind !== 'current') after(() => answer.next);
  const raw =
    answer.kind === 'first' ? await readAs(actor, (context) => readRawMethods(context, scope, now)) : [];
  const words = await insightWords(actor, scope);
  const { from, to } = scope.filter;
  return (
    <>
      <Heading text={t('methods.heading')} />
      <p className="lead">{await scopeSentence(scope, actor.language, await getLocale())}</p>
      <FilterForm
        action={'/questions/methods' as Route}
        fields={await questionFields(scope.choices, actor.language)}
        values={questionValues(scope.filter, asked.level)}
        chips={[]}
      />
      <FittedBlock answer={answer} timeZone={actor.networkTimeZone}>
        {(result) => <MethodsAnswerView answer={result} words={words} />}
      </FittedBlock>
      {raw.length === 0 ? null : <RawMethods rows={raw} words={words} />}
      <p className="no-print">
        <Link
          href={`/questions/methods?${queryOfQuestion({ ...asked, ...scope.filter, from, to })}` as Route}
        >
          {t('fit.reproduce')}
        </Link>
      </p>
    </>
  );
}
