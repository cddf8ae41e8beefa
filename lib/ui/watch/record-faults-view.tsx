import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { RecordFaults } from '@/lib/analysis/record-question/read-record-faults';
import type { FaultEffect, FaultKind, RecordFault } from '@/lib/analysis/record-question/record-fault';
import { formatDate } from '../format/date-text';
import type { InsightWords } from '../insight/insight-words';
import { Link } from '../page/link';
import { FaultEffectsTable } from './fault-effects-table';
import { sideOfCounted } from './side-of-counted';
import { SiteFaults } from './site-faults';

type Props = {
  readonly found: RecordFaults;
  readonly kinds: Readonly<Record<FaultKind, FaultEffect>>;
  readonly implausible: (kind: FaultKind) => boolean;
  /** A site to show open. */
  readonly site: string | undefined;
  readonly words: InsightWords;
};

/** The sites with most to mend; any other is looked for by name. */
const mostSites = 50;

/** What is missing or hard to believe: how much, what it does to the figures, and site by site where to mend it. */
export async function RecordFaultsView({ found, kinds, implausible, site, words }: Props) {
  const t = await getTranslations('watch.records');
  const locale = await getLocale();
  const { faults, effects, period, choices, mainContainer } = found;
  const dates = { from: formatDate(period.from, locale), to: formatDate(period.to, locale) };
  const doubted = faults.filter(({ kind }) => implausible(kind)).length;
  const faultsAt = new Map<string, RecordFault[]>();
  for (const fault of faults) {
    const own = faultsAt.get(fault.siteId);
    if (own) own.push(fault);
    else faultsAt.set(fault.siteId, [fault]);
  }
  const sites = choices.sites.filter(({ id }) => faultsAt.has(id));
  const most = new Set(
    [...faultsAt]
      .sort(([, a], [, b]) => b.length - a.length)
      .slice(0, mostSites)
      .map(([id]) => id),
  );
  // The one that was asked for comes first: nobody finds it among fifty.
  const asked = choices.sites.find(({ id }) => id === site);
  const shown = [
    ...sites.filter(({ id }) => id === site),
    ...sites.filter(({ id }) => most.has(id) && id !== site),
  ];
  const counts = { count: faults.length - doubted, implausible: doubted, sites: sites.length };
  const main = effects.find(({ container }) => container === mainContainer);
  const { number, units } = words;
  const sentence =
    faults.length === 0
      ? t('none', dates)
      : counts.count === 0
        ? t('answerImplausible', counts)
        : t('answer', counts);
  const effect =
    main?.rate == null
      ? undefined
      : main.uninspected === 0
        ? t('noEffect', { units })
        : t('effect', {
            ...{ uninspected: main.uninspected, due: main.due, units },
            share: number(main.uninspectedPercent ?? 0),
            side: sideOfCounted(main.rate),
            ...{
              rate: number(main.rate.counted, 1),
              low: number(main.rate.low, 1),
              high: number(main.rate.high, 1),
            },
          });
  return (
    <>
      <p className="answer-sentence">{sentence}</p>
      {found.latestOnly === undefined ? null : <p>{t('latestOnly', { most: found.latestOnly })}</p>}
      {effect === undefined ? null : <p className="lead">{effect}</p>}
      {faults.length === 0 ? null : <p>{t('next')}</p>}
      <FaultEffectsTable effects={effects} words={words} />
      {sites.length === 0 ? null : (
        <>
          <h2>{t('perSite')}</h2>
          <p className="quiet">{t('scope', dates)}</p>
          {asked === undefined || faultsAt.has(asked.id) ? null : (
            <p role="status">{t('noneAt', { site: asked.name, ...dates })}</p>
          )}
          {shown.length < sites.length ? (
            <p>
              {t('mostSites', { shown: most.size, count: sites.length })}{' '}
              <Link href={'/sites/choose?next=/questions/records' as Route}>{t('findSite')}</Link>
            </p>
          ) : null}
          {shown.map(({ id, name }) => (
            <SiteFaults
              key={id}
              site={name}
              siteId={id}
              faults={faultsAt.get(id) ?? []}
              kinds={kinds}
              open={sites.length === 1 || id === site}
            />
          ))}
        </>
      )}
    </>
  );
}
