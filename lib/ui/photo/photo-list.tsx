import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { dateInZone } from '@/lib/growing/calendar-date';
import type { PhotoView } from '@/lib/records/photo/list-photos.query';
import { formatDate } from '../format/date-text';
import { ButtonLink } from '../page/button-link';
import { Link } from '../page/link';

type Props = {
  readonly photos: readonly PhotoView[];
  readonly batch: { readonly id: string; readonly code: string; readonly timeZone: string };
  /** Whether another may be added. */
  readonly open: boolean;
};

/** The pictures of a batch and of its findings, each with its day, what it shows, and a way to take it out. */
export async function PhotoList({ photos, batch, open }: Props) {
  const t = await getTranslations('photos');
  const locale = await getLocale();
  return (
    <section id="photos">
      <h2>{t('heading')}</h2>
      {photos.length === 0 ? <p className="quiet">{t('none')}</p> : null}
      <ul className="photos">
        {photos.map((photo) => {
          const date = formatDate(dateInZone(new Date(photo.takenAt), batch.timeZone), locale);
          const alt = photo.caption ?? t(photo.findingId ? 'altFinding' : 'alt', { code: batch.code, date });
          const scale = Math.min(1, 320 / Math.max(photo.widthPx, photo.heightPx));
          return (
            <li key={photo.id}>
              <a href={`/photos/${photo.id}`}>
                <picture>
                  <img
                    src={`/photos/${photo.id}?size=small`}
                    alt={alt}
                    width={Math.round(photo.widthPx * scale)}
                    height={Math.round(photo.heightPx * scale)}
                    loading="lazy"
                  />
                </picture>
              </a>
              <p>
                {date}
                {photo.findingId ? `, ${t('ofFinding')}` : ''}
                {photo.caption ? `: ${photo.caption}` : ''}
              </p>
              <p>
                <Link className="tap" href={`/void/photo/${photo.id}?back=/batches/${batch.id}` as Route}>
                  {t('takeOut')}
                </Link>
              </p>
            </li>
          );
        })}
      </ul>
      {open ? (
        <p>
          <ButtonLink href={`/batches/${batch.id}/photos/new` as Route} plain>
            {t('add')}
          </ButtonLink>
        </p>
      ) : null}
    </section>
  );
}
