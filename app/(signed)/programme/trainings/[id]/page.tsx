import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getTraining } from '@/lib/records/training/get-training.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { RecordLinks } from '@/lib/ui/page/record-links';
import { AnswersTable } from '@/lib/ui/programme/answers-table';

export default async function TrainingPage({ params, searchParams }: PageProps<'/programme/trainings/[id]'>) {
  const { id } = await params;
  const { saved } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const training = isId(id) ? await readAs(actor, (context) => getTraining(context, id)) : undefined;
  if (!training) return <NotThere />;
  const t = await getTranslations('programme.trainings');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const { named, attendances, headCount } = training;
  const unseen = named - training.people.length;
  const came = headCount === null ? t('cameByName', { named }) : t('cameInAll', { attendances, named });
  return (
    <>
      <Heading text={training.title} />
      {saved === 'yes' ? <Notice>{(await getTranslations('programme'))('saved')}</Notice> : null}
      <DefinitionList
        items={[
          { label: t('columns.heldOn'), value: formatDate(training.heldOn, locale) },
          { label: t('columns.topic'), value: words(`trainingTopic.${training.topic}`) },
          { label: t('columns.site'), value: training.siteName },
          { label: t('columns.attendances'), value: came },
          ...(training.place === null ? [] : [{ label: t('columns.place'), value: training.place }]),
          ...(training.minutes === null
            ? []
            : [{ label: t('columns.minutes'), value: t('minutesOf', { minutes: training.minutes }) }]),
          ...(training.note === null ? [] : [{ label: t('columns.note'), value: training.note }]),
        ]}
      />
      {training.named === 0 ? null : (
        <>
          <h2>{t('people')}</h2>
          <ul>
            {training.people.map(({ id: personId, name }) => (
              <li key={personId}>
                <Link href={`/programme/participants/${personId}` as Route}>{name}</Link>
              </li>
            ))}
          </ul>
          {unseen === 0 ? null : <p>{t('unseen', { count: unseen })}</p>}
        </>
      )}
      {training.questions.length === 0 ? null : (
        <>
          <h2>{(await getTranslations('programme.answers'))('heading')}</h2>
          <AnswersTable questions={training.questions} />
        </>
      )}
      <RecordLinks
        path={`/programme/trainings/${id}`}
        kind="training"
        id={id}
        voided={training.voided}
        mayChange={true}
      />
    </>
  );
}
