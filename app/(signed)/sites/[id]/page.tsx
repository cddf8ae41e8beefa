import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listPlaces } from '@/lib/records/condition/list-places.query';
import { getSite } from '@/lib/records/site/get-site.query';
import { getSiteMethods } from '@/lib/records/site-method/get-site-methods.query';
import { SitePlaces } from '@/lib/ui/conditions/site-places';
import { formatDate } from '@/lib/ui/format/date-text';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';

export default async function SitePage({ params }: PageProps<'/sites/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const found = await readAs(actor, async (context) => {
    const row = await getSite(context, id);
    return (
      row && {
        site: row,
        places: await listPlaces(context, id),
        methods: (await getSiteMethods(context, id))?.methods.filter(({ available }) => available),
      }
    );
  });
  if (!found) return <NotThere />;
  const { site, places, methods } = found;
  const t = await getTranslations('sites');
  const watch = await getTranslations('watch.records');
  const next = await getTranslations('insight.next');
  const insight = await getTranslations('insight.sites');
  const sharing = await getTranslations('sharing');
  const leaving = await getTranslations('leaving');
  const open = site.voided === null && site.left === null;
  const words = await getTranslations('vocabulary');
  const common = await getTranslations('common');
  const locale = await getLocale();
  const when = (date: string | null) => (date === null ? common('notRecorded') : formatDate(date, locale));
  return (
    <>
      <Heading text={site.name} />
      {site.voided === null ? null : (
        <Notice tone="watch">{t('voided', { reason: site.voided.reason })}</Notice>
      )}
      {site.left === null ? null : (
        <Notice tone="watch">
          {leaving('site.left', {
            date: formatDate(todayInZone(site.timeZone, new Date(site.left.at)), locale),
            figures: site.left.figures,
          })}
        </Notice>
      )}
      <DefinitionList
        items={[
          { label: t('columns.code'), value: site.code },
          { label: t('columns.kind'), value: words(`siteKind.${site.kind}`) },
          { label: t('columns.timeZone'), value: site.timeZone },
          { label: t('columns.trimDefault'), value: words(`trimState.${site.trimDefault}`) },
          { label: t('columns.openedOn'), value: when(site.openedOn) },
          ...(site.closedOn === null ? [] : [{ label: t('columns.closedOn'), value: when(site.closedOn) }]),
          ...(methods === undefined
            ? []
            : [
                {
                  label: t('columns.methods'),
                  value: methods.map((method) => method[actor.language]).join(', ') || common('notRecorded'),
                },
              ]),
          ...(site.note === null ? [] : [{ label: t('columns.note'), value: site.note }]),
        ]}
      />
      <p>
        <Link href={`/batches?site=${site.id}` as Route}>{t('seeBatches')}</Link>
      </p>
      {site.left === null ? (
        <>
          <p>
            <Link href={`/questions/next?site=${site.id}` as Route}>{next('link')}</Link>
          </p>
          <p>
            <Link href={`/questions/sites/${site.id}` as Route}>{insight('ownLink')}</Link>
          </p>
          <p>
            <Link href={`/questions/records?site=${site.id}#site-${site.id}` as Route}>
              {watch('siteLink')}
            </Link>
          </p>
        </>
      ) : null}
      {methods === undefined ? null : (
        <p>
          <Link href={`/sites/${site.id}/methods` as Route}>{t('methods.link')}</Link>
        </p>
      )}
      {site.voided === null ? (
        <p>
          <Link href={`/sites/${site.id}/sharing` as Route}>{sharing('link')}</Link>
        </p>
      ) : null}
      {open ? (
        <p>
          <Link href={`/sites/${site.id}/leave` as Route}>{leaving('site.link')}</Link>
        </p>
      ) : null}
      {open ? <SitePlaces siteId={site.id} timeZone={site.timeZone} places={places} /> : null}
      {actor.role === 'coordinator' ? (
        <p className="record-links">
          <Link href={`/sites/${site.id}/correct`}>{common('correct')}</Link>{' '}
          <Link href={`/void/site/${site.id}?back=/sites/${site.id}`}>{common('void')}</Link>{' '}
          <Link href={`/history/${site.id}`}>{t('history')}</Link>
        </p>
      ) : null}
    </>
  );
}
