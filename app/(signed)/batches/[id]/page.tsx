import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { singleBatchContamination } from '@/lib/analysis/single-batch-contamination';
import { newId } from '@/lib/base/new-id';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { getBatchConditions } from '@/lib/records/condition/get-batch-conditions.query';
import { isId } from '@/lib/records/fields/id-field';
import { listPhotos } from '@/lib/records/photo/list-photos.query';
import { BatchFacts } from '@/lib/ui/batches/batch-facts';
import { BatchFigures } from '@/lib/ui/batches/batch-figures';
import { BatchLives } from '@/lib/ui/batches/batch-lives';
import { BatchSteps } from '@/lib/ui/batches/batch-steps';
import { BatchStory } from '@/lib/ui/batches/batch-story';
import { BedLayers } from '@/lib/ui/batches/bed-layers';
import { ScannedUnit } from '@/lib/ui/batches/scanned-unit';
import { StartedNext } from '@/lib/ui/batches/started-next';
import { BatchConditionsSection } from '@/lib/ui/conditions/batch-conditions-section';
import { CostLink } from '@/lib/ui/costs/cost-link';
import { formatDate } from '@/lib/ui/format/date-text';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { PhotoList } from '@/lib/ui/photo/photo-list';
import { TraceLink } from '@/lib/ui/trace/trace-link';
import { lookTodayAction } from './actions';
import { livesOf } from './lives-of';

const savedKinds = [
  'yes',
  'look',
  'finding',
  'followUp',
  'loss',
  'check',
  'correction',
  'layers',
  'photo',
] as const;

export default async function BatchPage({ params, searchParams }: PageProps<'/batches/[id]'>) {
  const { id } = await params;
  const { saved: asked, unit } = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const read = isId(id)
    ? await readAs(actor, async (context) => {
        const now = new Date();
        const found = await getBatch(context, id, now);
        if (!found) return undefined;
        return {
          page: found,
          lives: await livesOf(context, found),
          photos: await listPhotos(context, id),
          conditions: await getBatchConditions(context, id, now),
        };
      })
    : undefined;
  if (!read) return <NotThere />;
  const { page, lives, photos, conditions } = read;
  const { batch, figures } = page;
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary.containerCount');
  const locale = await getLocale();
  const saved = savedKinds.find((kind) => kind === asked);
  const reader = { page, language: actor.language, unit: actor.massUnit };
  const outcome = figures.contamination;
  const judged = outcome.kind === 'value' && outcome.value.kind === 'inspected' ? outcome.value : undefined;
  return (
    <>
      <Heading text={t('page.heading', { code: batch.code })} />
      {saved === undefined ? null : <Notice>{t(`page.saved.${saved}`, { code: batch.code })}</Notice>}
      <ScannedUnit batch={batch} unit={unit} />
      {saved === 'yes' ? <StartedNext batch={batch} /> : null}
      {batch.voidReason === null ? null : (
        <Notice tone="watch">{t('page.voided', { reason: batch.voidReason })}</Notice>
      )}
      <p>
        {t(batch.secondLife ? 'page.summarySecondLife' : 'page.summary', {
          units: words(batch.containerKind, { count: batch.unitCount }),
          species: batch.species[actor.language],
          site: batch.siteName,
          date: formatDate(batch.inoculatedOn, locale),
        })}
      </p>
      <BatchFigures
        page={page}
        unit={actor.massUnit}
        rate={
          judged === undefined
            ? undefined
            : singleBatchContamination({
                contaminatedUnits: judged.contaminatedByWindowEnd,
                inoculatedUnits: judged.inoculatedUnits,
                asOf: new Date().toISOString(),
              })
        }
      />
      {batch.siteLeft ? (
        <p>
          {t('page.siteLeft', { site: batch.siteName })}{' '}
          {actor.role === 'coordinator' && batch.closedOn === null && batch.voidReason === null ? (
            <Link href={`/batches/${id}/close` as Route}>{t('submitClose')}</Link>
          ) : null}
        </p>
      ) : null}
      {batch.voidReason === null && !batch.siteLeft ? (
        <BatchSteps page={page} lookAction={lookTodayAction} lookId={newId()} />
      ) : null}
      <h2>{t('page.story')}</h2>
      <p className="quiet">{t('page.storyOrder')}</p>
      <BatchStory {...reader} />
      <PhotoList photos={photos} batch={batch} open={batch.voidReason === null && !batch.siteLeft} />
      <h2>{t('page.facts')}</h2>
      <BatchFacts {...reader} />
      {batch.containerKind === 'bed' ? (
        <BedLayers batch={batch} massUnit={actor.massUnit} volumeUnit={actor.volumeUnit} />
      ) : null}
      {conditions === undefined ? null : (
        <BatchConditionsSection
          conditions={conditions}
          story={page.story}
          temperatureUnit={actor.temperatureUnit}
        />
      )}
      {lives.length === 0 ? null : (
        <BatchLives lives={lives} unit={actor.massUnit} timeZone={batch.timeZone} />
      )}
      <TraceLink kind="batch" id={id} />
      <CostLink of="batch" id={id} />
      <p className="record-links">
        {batch.voidReason === null ? (
          <>
            {batch.siteLeft ? null : (
              <>
                <Link href={`/batches/${id}/correct` as Route}>{t('do.correct')}</Link>{' '}
              </>
            )}
            <Link href={`/void/batch/${id}?back=/batches/${id}` as Route}>{t('do.void')}</Link>{' '}
          </>
        ) : null}
        <Link href={`/history/${id}` as Route}>{t('page.history')}</Link>
      </p>
    </>
  );
}
