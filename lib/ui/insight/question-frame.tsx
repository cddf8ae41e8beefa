import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import type { Actor } from '@/lib/access/actor';
import { type AskedQuestion, queryOfQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import type { QuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import type { FittedAnswer } from '@/lib/analysis/fitted/fitted-answer';
import type { Address } from '@/lib/base/given-once';
import type { FieldError } from '@/lib/base/result';
import { DayProblemsSummary } from '../comparison/day-problems-summary';
import { loadDayProblems } from '../comparison/load-day-problems';
import { scopeSentence } from '../comparison/scope-sentence';
import { FilterForm } from '../form/filter-form';
import { EmptyState } from '../page/empty-state';
import { Heading } from '../page/heading';
import { Link } from '../page/link';
import { FittedBlock } from './fitted-block';
import { type InsightWords, insightWords } from './insight-words';
import { questionFields, questionValues } from './question-fields';
import type { Question } from './questions';

type Props<Answer> = {
  readonly question: Question;
  readonly actor: Actor;
  readonly asked: AskedQuestion;
  /** The address as it was asked, and what is wrong with its days. */
  readonly address: Address;
  readonly problems: readonly FieldError[];
  /** Undefined while nothing is recorded. */
  readonly known: { readonly scope: QuestionScope; readonly answer: FittedAnswer<Answer> } | undefined;
  /** Whether the reader chooses what else is levelled out. */
  readonly levels?: boolean;
  readonly children: (answer: Answer, words: InsightWords) => ReactNode;
  /** Shown under the answer, for instance raw figures that need no fit. */
  readonly below?: (words: InsightWords) => ReactNode;
};

/** The page of a question: what is asked, of which batches, the answer as soon as it is there, and its own address. */
export async function QuestionFrame<Answer>(props: Props<Answer>) {
  const { question, actor, asked, known, levels = false } = props;
  const t = await getTranslations('insight');
  const heading = t(`index.${question}`, { unit: actor.massUnit });
  if (!known)
    return (
      <>
        <Heading text={heading} />
        <EmptyState text={t('fit.empty')} />
      </>
    );
  const { scope, answer } = known;
  const words = await insightWords(actor, scope);
  const fields = await questionFields(scope.choices, actor.language);
  const path = `/questions/${question}`;
  const days = await loadDayProblems(props, scope.filter, 'comparison.filter');
  return (
    <>
      <DayProblemsSummary errors={days.errors} />
      <Heading text={heading} failed={days.errors.length > 0} />
      <p className="lead">{await scopeSentence(scope, actor.language, await getLocale())}</p>
      {days.shown === undefined ? null : <p className="notice">{days.shown}</p>}
      <FilterForm
        action={path as Route}
        fields={levels ? fields : fields.filter(({ name }) => name !== 'level')}
        values={{ ...questionValues(scope.filter, asked.level), ...days.values }}
        errors={days.errors}
        chips={[]}
      />
      <FittedBlock answer={answer} timeZone={actor.networkTimeZone}>
        {(result) => props.children(result, words)}
      </FittedBlock>
      {props.below?.(words)}
      <p className="no-print">
        <Link href={`${path}?${queryOfQuestion({ ...asked, ...scope.filter })}` as Route}>
          {t('fit.reproduce')}
        </Link>
      </p>
    </>
  );
}
