import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { getLocale, getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { formatMass } from '@/lib/growing/format-quantity';
import { isId } from '@/lib/records/fields/id-field';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { getNote } from '@/lib/records/words/get-note.query';
import { CostLink } from '@/lib/ui/costs/cost-link';
import { InlineForm } from '@/lib/ui/form/inline-form';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { formatTemperature } from '@/lib/ui/format/temperature-text';
import { formatVolume } from '@/lib/ui/format/volume-text';
import { NoteText } from '@/lib/ui/history/note-text';
import { LotUses } from '@/lib/ui/lots/lot-uses';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { RecordLinks } from '@/lib/ui/page/record-links';
import { Status } from '@/lib/ui/page/status';
import { loadSiteWords } from '@/lib/ui/sharing/site-words';
import { TraceLink } from '@/lib/ui/trace/trace-link';
import { Evidence } from '@/lib/ui/treatments/evidence';
import { FallsNote } from '@/lib/ui/treatments/falls-note';
import { LeftRun } from '@/lib/ui/treatments/left-run';
import { loadClock } from '@/lib/ui/treatments/load-clock';
import { loadJudgement } from '@/lib/ui/treatments/load-judgement';
import { quickReadingFields } from '@/lib/ui/treatments/quick-reading-fields';
import { ReadingsTable } from '@/lib/ui/treatments/readings-table';
import { RunChart } from '@/lib/ui/treatments/run-chart';
import { RunClock } from '@/lib/ui/treatments/run-clock';
import { windowText } from '@/lib/ui/treatments/window-text';
import { addReadingAction } from '../actions';

export default async function TreatmentPage({ params }: PageProps<'/treatments/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const run = isId(id) ? await readAs(actor, (context) => getTreatment(context, id, now)) : undefined;
  if (!run) {
    const noted = isId(id)
      ? await readAs(actor, (context) => getNote(context, 'treatment-run', id))
      : undefined;
    // Voided: its history tells why, and takes the note out.
    if (noted?.voided) redirect(`/history/${id}` as Route);
    return <NotThere />;
  }
  const t = await getTranslations('treatments');
  const locale = await getLocale();
  const judgement = await loadJudgement(run, actor.temperatureUnit);
  const clock = await loadClock(run, now);
  const zone = run.site.timeZone;
  // A run that another site made is read here, and tended there.
  const mine = run.site.id !== null;
  const left = run.siteLeftAt !== null;
  const optional = (label: string, value: ReactNode) => (value === null ? [] : [{ label, value }]);
  return (
    <>
      <Heading text={t('headingOne', { method: run.method[actor.language], code: run.code })} />
      <p>
        <Status tone={judgement.tone} word={judgement.word} />
      </p>
      {clock === undefined || left ? null : <RunClock {...clock} />}
      <p className="lead">{judgement.sentence}</p>
      <FallsNote run={run} temperatureUnit={actor.temperatureUnit} />
      {run.endedAt === null && mine && !left ? (
        <div className="no-print reading-now">
          <InlineForm
            action={addReadingAction}
            label={t('addReading')}
            fields={await quickReadingFields(run.method.kind, actor.temperatureUnit)}
            values={{ treatmentRunId: id, id: newId() }}
            submitLabel={t('readingNow')}
            words={await loadFormWords()}
          />
        </div>
      ) : null}
      {left ? <LeftRun run={run} mayEnd={actor.role === 'coordinator'} /> : null}
      {mine && !left ? (
        <p className="chips no-print">
          {run.endedAt === null ? (
            <ButtonLink href={`/treatments/${id}/end` as Route} plain>
              {t('endSubmit')}
            </ButtonLink>
          ) : null}
          <ButtonLink href={`/treatments/${id}/readings/new` as Route} plain>
            {t(run.endedAt === null ? 'readingEarlier' : 'addReading')}
          </ButtonLink>
        </p>
      ) : null}
      <RunChart run={run} temperatureUnit={actor.temperatureUnit} />
      <DefinitionList
        items={[
          { label: t('columns.site'), value: (await loadSiteWords())(run.site.shown) },
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
          ...optional(
            t('columns.note'),
            run.note === null ? null : <NoteText kind="treatment-run" id={id} note={run.note} fixed={left} />,
          ),
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
      {actor.role === 'coordinator' && !left ? (
        <p>
          <ButtonLink href={`/treatments/${id}/allocate` as Route} plain>
            {t('allocate')}
          </ButtonLink>
        </p>
      ) : null}
      <LotUses
        batches={run.batches.map(({ id: batchId, code, siteName }) => ({ batchId, code, siteName }))}
      />
      <TraceLink kind="treatment" id={id} />
      {mine ? (
        <>
          <CostLink of="treatment-run" id={id} />
          <RecordLinks
            path={`/treatments/${id}`}
            kind="treatment-run"
            id={id}
            voided={null}
            mayChange
            mayCorrect={!left}
          />
        </>
      ) : null}
    </>
  );
}
