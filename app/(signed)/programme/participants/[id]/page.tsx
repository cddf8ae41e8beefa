import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getParticipant } from '@/lib/records/participant/get-participant.query';
import { consentKinds } from '@/lib/records/participant/participant.input';
import { formatDate } from '@/lib/ui/format/date-text';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { RecordLinks } from '@/lib/ui/page/record-links';

export default async function ParticipantPage({
  params,
  searchParams,
}: PageProps<'/programme/participants/[id]'>) {
  const { id } = await params;
  const { saved } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const participant = isId(id) ? await readAs(actor, (context) => getParticipant(context, id)) : undefined;
  if (!participant) return <NotThere />;
  const t = await getTranslations('programme.participants');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const agreed = (day: string | null) =>
    day === null ? t('notAgreed') : t('agreedSince', { date: formatDate(day, locale) });
  return (
    <>
      <Heading text={participant.name ?? t('erasedName')} />
      {saved === 'yes' ? <Notice>{(await getTranslations('programme'))('saved')}</Notice> : null}
      <DefinitionList
        items={[
          { label: t('columns.site'), value: participant.siteName },
          ...consentKinds.map((kind) => ({
            label: sentenceCase(words(`consentKind.${kind}`)),
            value: agreed(participant.consents[kind]),
          })),
        ]}
      />
      {participant.erased ? <p>{t('erasedNotice')}</p> : null}
      <h2>{t('came')}</h2>
      {participant.came.length === 0 ? (
        <p>{t('cameNone')}</p>
      ) : (
        <ul>
          {participant.came.map(({ id: trainingId, title, heldOn }) => (
            <li key={trainingId}>
              <Link href={`/programme/trainings/${trainingId}` as Route}>{title}</Link>
              {`, ${formatDate(heldOn, locale)}`}
            </li>
          ))}
        </ul>
      )}
      {participant.erased || participant.voided !== null ? null : (
        <p className="no-print">
          <Link href={`/programme/participants/${id}/erase` as Route}>{t('erase')}</Link>
        </p>
      )}
      <RecordLinks
        path={`/programme/participants/${id}`}
        kind="participant"
        id={id}
        voided={participant.voided}
        mayChange={!participant.erased}
      />
    </>
  );
}
