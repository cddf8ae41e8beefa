import { getLocale, getTranslations } from 'next-intl/server';
import type { SiteReaders } from '@/lib/records/lot-notice/read-readers';
import { formatInstant } from '../format/instant-text';
import { DataTable } from '../table/data-table';

type Props = { readonly readers: readonly SiteReaders[]; readonly timeZone: string };

/** Who of each site has read a notice and when, and who has not. */
export async function ReadersTable({ readers, timeZone }: Props) {
  const t = await getTranslations('notices.readers');
  const locale = await getLocale();
  const list = new Intl.ListFormat(locale, { type: 'conjunction' });
  const nobody = (site: SiteReaders) =>
    t(site.read.length + site.notYet.length === 0 ? 'noMember' : 'nobody');
  return (
    <DataTable
      caption={t('caption')}
      rows={readers}
      rowKey={({ siteId }) => siteId}
      columns={[
        { key: 'site', header: t('site'), cell: ({ siteName }) => siteName },
        {
          key: 'read',
          header: t('read'),
          roomy: true,
          cell: (site) =>
            site.read.length === 0
              ? nobody(site)
              : list.format(
                  site.read.map(({ name, at }) =>
                    t('one', { name, when: formatInstant(new Date(at), timeZone, locale) }),
                  ),
                ),
        },
        {
          key: 'notYet',
          header: t('notYet'),
          cell: (site) => (site.notYet.length === 0 ? nobody(site) : list.format(site.notYet)),
        },
      ]}
    />
  );
}
