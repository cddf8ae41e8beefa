import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { trialSize } from '@/lib/analysis/trials/trial-size';
import { listNextRuns } from '@/lib/records/trial/list-next-runs.query';
import { previewTrialResult } from '@/lib/report/trial/preview-trial-result.query';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Status } from '@/lib/ui/page/status';
import { DraftSection } from '@/lib/ui/trials/draft-section';
import { NextRuns } from '@/lib/ui/trials/next-runs';
import { PlanFacts } from '@/lib/ui/trials/plan-facts';
import { PreviewSection } from '@/lib/ui/trials/preview-section';
import { ProgressSentence } from '@/lib/ui/trials/progress-sentence';
import { SlotsTable } from '@/lib/ui/trials/slots-table';
import { publishTrialResultAction, settleTrialSizeAction, startTrialAction } from '../actions';
import { loadTrial } from './load-trial';

const tones = { draft: 'plain', running: 'watch', ended: 'watch', published: 'good' } as const;

export default async function TrialPage({ params }: PageProps<'/trials/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const trial = await loadTrial(actor, id);
  if (!trial) return <NotThere />;
  const t = await getTranslations('trials');
  const common = await getTranslations('common');
  const locale = await getLocale();
  const coordinates = actor.role === 'coordinator';
  const { state } = trial;
  const runs = state === 'running' ? await readAs(actor, listNextRuns) : [];
  const preview =
    state === 'ended'
      ? await readAs(actor, (context) => previewTrialResult(context, id, new Date()))
      : undefined;
  const size =
    state === 'draft'
      ? trialSize({ ...trial, arms: trial.arms.length, sites: trial.sites.length })
      : undefined;
  return (
    <>
      <Heading text={trial.title} />
      <p className="lead">{trial.question}</p>
      <p>
        <Status tone={tones[state]} word={t(`state.${state}`)} />
      </p>
      {state === 'published' ? (
        <p>
          <ButtonLink href={`/trials/${id}/result` as Route}>{t('result.link')}</ButtonLink>
        </p>
      ) : null}
      {size === undefined ? null : (
        <DraftSection trial={trial} size={size} start={startTrialAction} settle={settleTrialSizeAction} />
      )}
      {preview === undefined ? null : (
        <PreviewSection content={preview} actor={actor} trialId={id} publish={publishTrialResultAction} />
      )}
      {trial.slots.length === 0 ? null : <ProgressSentence trial={trial} />}
      <NextRuns runs={runs.filter(({ trialId }) => trialId === id)} />
      {trial.slots.length === 0 ? null : (
        <>
          <SlotsTable trial={trial} own={!coordinates} />
          <p className="record-links no-print">
            <Link href={`/trials/${id}/sheet` as Route}>{t('sheet.link')}</Link>
            {coordinates && state === 'running' ? (
              <>
                {' '}
                <Link href={`/trials/${id}/notes/new` as Route}>{t('note.link')}</Link>{' '}
                <Link href={`/trials/${id}/end` as Route}>{t('end.link')}</Link>
              </>
            ) : null}
          </p>
        </>
      )}
      {trial.notes.length === 0 ? null : (
        <>
          <h2>{t('note.list')}</h2>
          <ul>
            {trial.notes.map(({ id: noteId, notedAt, note }) => (
              <li key={noteId}>
                {formatInstant(new Date(notedAt), actor.networkTimeZone, locale)}: {note}
              </li>
            ))}
          </ul>
        </>
      )}
      <h2>{t('plan.heading')}</h2>
      <PlanFacts trial={trial} actor={actor} />
      {coordinates ? (
        <p className="record-links no-print">
          <Link href={`/history/${id}` as Route}>{common('history.link')}</Link>
        </p>
      ) : null}
    </>
  );
}
