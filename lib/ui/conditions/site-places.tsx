import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { PlaceLine } from '@/lib/records/condition/list-places.query';
import { formatInstant } from '../format/instant-text';
import { Link } from '../page/link';

type Props = {
  readonly siteId: string;
  readonly timeZone: string;
  readonly places: readonly PlaceLine[];
};

/** The places of a site whose conditions are read, by name, with when each was read last. */
export async function SitePlaces({ siteId, timeZone, places }: Props) {
  const t = await getTranslations('conditions');
  const locale = await getLocale();
  return (
    <section>
      <h2>{t('placesHeading')}</h2>
      {places.length === 0 ? (
        <p>{t('noPlaces')}</p>
      ) : (
        <ul>
          {places.map(({ id, name, lastReadAt }) => (
            <li key={id}>
              <Link href={`/sites/${siteId}/places/${id}` as Route}>{name}</Link>{' '}
              <span className="quiet">
                {lastReadAt === null
                  ? t('neverRead')
                  : t('lastRead', { at: formatInstant(lastReadAt, timeZone, locale) })}
              </span>
            </li>
          ))}
        </ul>
      )}
      <p className="record-links">
        <Link href={`/sites/${siteId}/places/new` as Route}>{t('addPlace')}</Link>
      </p>
    </section>
  );
}
