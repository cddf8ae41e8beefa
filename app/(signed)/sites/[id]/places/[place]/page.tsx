import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { ConditionCharts } from '@/lib/ui/conditions/condition-charts';
import { PlaceTables } from '@/lib/ui/conditions/place-tables';
import { SaveRows } from '@/lib/ui/export/save-rows';
import { formatNumber } from '@/lib/ui/format/number-text';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { RecordLinks } from '@/lib/ui/page/record-links';
import { loadPlace } from './load-place';

const count = (text: string | string[] | undefined) =>
  typeof text === 'string' && /^\d{1,7}$/.test(text) ? Number(text) : undefined;

export default async function PlacePage({ params, searchParams }: PageProps<'/sites/[id]/places/[place]'>) {
  const address = await params;
  const asked = await searchParams;
  const actor = await requireActor('coordinator', 'member');
  const place = await loadPlace(actor, address, new Date());
  if (!place) return <NotThere />;
  const t = await getTranslations('conditions');
  const locale = await getLocale();
  const path = `/sites/${place.site.id}/places/${place.id}`;
  const [read, added] = [count(asked.read), count(asked.added)];
  return (
    <>
      <Heading text={t('placeHeading', { name: place.name, site: place.site.name })} />
      {read === undefined || added === undefined ? null : <Notice>{t('imported', { read, added })}</Notice>}
      {place.note === null ? null : <p>{place.note}</p>}
      <p className="chips no-print">
        <ButtonLink href={`${path}/readings/new` as Route}>{t('addConditions')}</ButtonLink>
        <ButtonLink href={`${path}/import` as Route} plain>
          {t('importLink')}
        </ButtonLink>
      </p>
      <h2>{t('lastDays')}</h2>
      <ConditionCharts days={place.days} temperatureUnit={actor.temperatureUnit} />
      <h2>
        {t('standingHeading')} ({formatNumber(place.batches.length, locale, 0)})
      </h2>
      {place.batches.length === 0 ? (
        <p>{t('nobody')}</p>
      ) : (
        <ul>
          {place.batches.map(({ id, code }) => (
            <li key={id}>
              <Link href={`/batches/${id}`}>{code}</Link>
            </li>
          ))}
        </ul>
      )}
      <SaveRows tables={['conditions']} address={{ place: place.id }} />
      <PlaceTables place={place} path={path} temperatureUnit={actor.temperatureUnit} />
      <p>
        <Link href={`/sites/${place.site.id}`}>{place.site.name}</Link>
      </p>
      <RecordLinks path={path} kind="condition-place" id={place.id} voided={null} mayChange />
    </>
  );
}
