import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { containerKinds } from '@/lib/growing/vocabulary';
import { ContainerChips } from '@/lib/ui/batches/container-chips';
import { RepeatLink } from '@/lib/ui/batches/repeat-link';
import { RepeatNotes } from '@/lib/ui/batches/repeat-notes';
import { repeatValues } from '@/lib/ui/batches/repeat-values';
import { startDefaults } from '@/lib/ui/batches/start-defaults';
import { startFields } from '@/lib/ui/batches/start-fields';
import { addressValues } from '@/lib/ui/form/address-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { ChoosingNotices } from '@/lib/ui/notices/choosing-notices';
import { FirstStep } from '@/lib/ui/page/first-step';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { loadSums } from '@/lib/ui/sums/load-sums';
import { addressWith } from '@/lib/ui/table/address-with';
import { TrialBanner } from '@/lib/ui/trials/trial-banner';
import { siteFirst } from '../../site-first';
import { startBatchAction } from './actions';
import { beginStart } from './begin-start';
import { loadStart } from './load-start';

const componentRows = 3;
const layerRows = 5;

export default async function NewBatchPage({ searchParams }: PageProps<'/batches/new'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const now = new Date();
  const begun = await readAs(actor, (context) => beginStart(context, address, now));
  if (begun === undefined) return <NotThere />;
  const { repeat, drawn, trialRuns } = begun;
  const { other } = await siteFirst(begun.sites, addressWith('/batches/new', address, {}), 'start');
  const start = await readAs(actor, (context) => loadStart(context, begun));
  const { last, siteId, timeZone } = start;
  const chosen = begun.sites.chosen?.id;
  // What is left of spawn was worked out where the repeated batch is.
  const atOtherSite = repeat !== undefined && siteId !== repeat.batch.siteId;
  const container =
    repeat?.batch.containerKind ?? containerKinds.find((kind) => kind === address.container) ?? 'bag';
  const t = await getTranslations('batches');
  const options = await start.options(actor);
  if (options.sites.length === 0 || options.lots.length === 0) {
    const need = options.sites.length === 0 ? 'site' : 'material';
    return <FirstStep heading={t('new')} need={need} role={actor.role} />;
  }
  const s = await getTranslations('sums');
  const today = repeat?.today ?? todayInZone(timeZone, now);
  const fields = await startFields({
    container,
    options,
    otherSite: other,
    days: await recentDays(today),
    massUnit: actor.massUnit,
    componentRows,
    layers: { rows: layerRows, volumeUnit: actor.volumeUnit },
    sums: await loadSums(actor, start.sumFacts(container, actor.language)),
    ...(repeat === undefined ? {} : { copiedFrom: repeat.batch.code }),
  });
  return (
    <RecordForm
      key={`${container} ${repeat?.batch.id ?? ''}`}
      action={startBatchAction}
      heading={repeat === undefined ? t('new') : t('repeat.heading', { code: repeat.batch.code })}
      fields={[
        ...fields,
        { kind: 'hidden', name: 'id' },
        ...(drawn === undefined ? [] : [{ kind: 'hidden' as const, name: 'trialSlotId' }]),
      ]}
      values={{
        ...startDefaults(container),
        siteId,
        inoculatedOn__quick: today,
        ...(repeat === undefined ? {} : repeatValues(repeat, actor)),
        ...addressValues(fields, address),
        ...(chosen === undefined ? {} : { siteId: chosen }),
        containerKind: container,
        id: newId(),
        ...(drawn === undefined ? {} : { trialSlotId: drawn.slotId }),
      }}
      submitLabel={t('submitNew')}
      words={await loadFormWords()}
      after={<Link href={'/sums' as Route}>{s('link')}</Link>}
    >
      <ChoosingNotices notices={start.notices} language={actor.language} />
      <TrialBanner drawn={drawn} runs={trialRuns} />
      {repeat === undefined ? (
        <>
          {last === undefined ? null : <RepeatLink batch={last} language={actor.language} />}
          <p>{t('newIntro')}</p>
          <ContainerChips
            chosen={container}
            path={addressWith('/batches/new', address, { container: undefined })}
          />
        </>
      ) : (
        <>
          <RepeatNotes
            repeat={atOtherSite ? { ...repeat, spawn: [] } : repeat}
            language={actor.language}
            massUnit={actor.massUnit}
          />
          <p>
            <Link href={addressWith('/batches/new', { siteId: chosen }, {}) as Route}>
              {t('repeat.different')}
            </Link>
          </p>
        </>
      )}
    </RecordForm>
  );
}
