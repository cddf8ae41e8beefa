import { getLocale, getTranslations } from 'next-intl/server';
import type { LinkView } from '@/lib/report/link/list-links.query';
import { formatDate } from '../format/date-text';
import { formatInstant } from '../format/instant-text';
import { lastWholeDay } from '../format/last-whole-day';
import { formatNumber } from '../format/number-text';
import { DataTable } from '../table/data-table';

type Props = {
  readonly links: readonly LinkView[];
  readonly timeZone: string;
  readonly now: Date;
  readonly withdraw: (data: FormData) => Promise<void>;
};

/** The links of a report with their openings; open ones can be withdrawn. */
export async function LinkTable({ links, timeZone, now, withdraw }: Props) {
  const t = await getTranslations('links');
  const locale = await getLocale();
  const at = (instant: string) => formatInstant(new Date(instant), timeZone, locale);
  const stateOf = ({ withdrawnAt, expiresAt }: LinkView) => {
    if (withdrawnAt !== undefined) return t('withdrawn', { date: at(withdrawnAt) });
    const lastDay = lastWholeDay(new Date(expiresAt), timeZone);
    return t(new Date(expiresAt) > now ? 'open' : 'expired', { date: formatDate(lastDay, locale) });
  };
  const isOpen = ({ withdrawnAt, expiresAt }: LinkView) =>
    withdrawnAt === undefined && new Date(expiresAt) > now;
  return (
    <DataTable
      caption={t('caption')}
      rows={links}
      rowKey={({ id }) => id}
      columns={[
        { key: 'forWhom', header: t('columns.forWhom'), cell: ({ forWhom }) => forWhom },
        { key: 'state', header: t('columns.state'), cell: stateOf },
        {
          key: 'withdraw',
          header: t('columns.withdraw'),
          cell: (link) =>
            isOpen(link) ? (
              <form action={withdraw}>
                <input type="hidden" name="id" value={link.id} />
                <button
                  type="submit"
                  className="button button-plain"
                  aria-label={t('withdrawFor', { name: link.forWhom })}
                >
                  {t('withdraw')}
                </button>
              </form>
            ) : null,
        },
        {
          key: 'visits',
          header: t('columns.visits'),
          numeric: true,
          cell: ({ visits }) => formatNumber(visits, locale),
        },
        {
          key: 'latest',
          header: t('columns.latest'),
          cell: ({ latest }) =>
            latest.length === 0 ? (
              t('never')
            ) : (
              <ul className="plain-list">
                {latest.map(({ form, at: opened }) => (
                  <li key={opened + form}>{t('visit', { date: at(opened), form: t(`form.${form}`) })}</li>
                ))}
              </ul>
            ),
        },
        {
          key: 'language',
          header: t('columns.language'),
          cell: ({ language }) => t(language === 'en' ? 'languageEn' : 'languageEs'),
        },
      ]}
    />
  );
}
