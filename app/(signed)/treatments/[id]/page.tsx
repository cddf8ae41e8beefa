import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { formatMass } from '@/lib/growing/format-quantity';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { formatTemperature } from '@/lib/ui/format/temperature-text';
import { formatVolume } from '@/lib/ui/format/volume-text';
import { LotUses } from '@/lib/ui/lots/lot-uses';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { RecordLinks } from '@/lib/ui/page/record-links';
import { Status } from '@/lib/ui/page/status';
import { Evidence } from '@/lib/ui/treatments/evidence';
import { loadJudgement } from '@/lib/ui/treatments/load-judgement';
import { ReadingsTable } from '@/lib/ui/treatments/readings-table';
import { windowText } from '@/lib/ui/treatments/window-text';

export default async function TreatmentPage({ params }: PageProps<'/treatments/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const run = /^[0-9a-f-]{36}$/i.test(id)
    ? await readAs(actor, (context) => getTreatment(context, id, new Date()))
    : undefined;
  if (!run) return <NotThere />;
  const t = await getTranslations('treatments');
  const locale = await getLocale();
  const judgement = await loadJudgement(run, actor.temperatureUnit);
  const zone = run.site.timeZone;
  const optional = (label: string, value: string | null) => (value === null ? [] : [{ label, value }]);
  return (
    <>
      <Heading text={t('headingOne', { method: run.method[actor.language], code: run.code })} />
      <p>
        <Status tone={judgement.tone} word={judgement.word} />
      </p>
      <p className="lead">{judgement.sentence}</p>
      <p className="chips no-print">
        <ButtonLink href={`/treatments/${id}/readings/new` as Route}>{t('addReading')}</ButtonLink>
        {run.endedAt === null ? (
          <ButtonLink href={`/treatments/${id}/end` as Route} plain>
            {t('endSubmit')}
          </ButtonLink>
        ) : null}
      </p>
      <DefinitionList
        items={[
          { label: t('columns.site'), value: run.site.name },
          { label: t('columns.started'), value: formatInstant(run.startedAt, zone, locale) },
          {
            label: t('columns.ended'),
            value: run.endedAt === null ? t('state.running') : formatInstant(run.endedAt, zone, locale),
          },
          ...optional(t('columns.window'), await windowText(run.window, actor.temperatureUnit)),
          ...optional(
            t('columns.load'),
            run.loadGrams === null ? null : formatMass(run.loadGrams, actor.massUnit, locale),
          ),
          ...optional(
            t('columns.water'),
            run.waterMillilitres === null
              ? null
              : formatVolume(run.waterMillilitres / 1000, actor.volumeUnit, locale),
          ),
          ...optional(
            t('columns.lime'),
            run.limeGrams === null ? null : formatMass(run.limeGrams, actor.massUnit, locale),
          ),
          ...optional(
            t('columns.loadAtSpawning'),
            run.loadCelsiusAtSpawning === null
              ? null
              : formatTemperature(run.loadCelsiusAtSpawning, actor.temperatureUnit, locale),
          ),
          ...optional(t('columns.note'), run.note),
        ]}
      />
      <h2>{t('readingsHeading')}</h2>
      <ReadingsTable
        runId={id}
        readings={run.readings}
        timeZone={zone}
        temperatureUnit={actor.temperatureUnit}
      />
      <Evidence method={run.method.kind} language={actor.language} />
      {run.allocations.length === 0 ? null : (
        <>
          <h2>{t('allocatedHeading')}</h2>
          <ul>
            {run.allocations.map((one) => (
              <li key={one.id}>{one.siteName}</li>
            ))}
          </ul>
        </>
      )}
      {actor.role === 'coordinator' ? (
        <p>
          <ButtonLink href={`/treatments/${id}/allocate` as Route} plain>
            {t('allocate')}
          </ButtonLink>
        </p>
      ) : null}
      <LotUses
        batches={run.batches.map(({ id: batchId, code, siteName }) => ({ batchId, code, siteName }))}
      />
      <RecordLinks path={`/treatments/${id}`} kind="treatment-run" id={id} voided={null} mayChange />
    </>
  );
}
