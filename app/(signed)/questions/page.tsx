import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { questions } from '@/lib/ui/insight/questions';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';

/** The questions that have a page. */
export default async function QuestionsPage() {
  const { massUnit } = await requireActor('coordinator');
  const t = await getTranslations('insight.index');
  return (
    <>
      <Heading text={t('heading')} />
      <p className="lead">{t('lead')}</p>
      {questions.map((question) => (
        <section key={question}>
          <h2>
            <Link href={`/questions/${question}` as Route}>{t(question, { unit: massUnit })}</Link>
          </h2>
          <p>{t(`${question}Note`)}</p>
        </section>
      ))}
    </>
  );
}
