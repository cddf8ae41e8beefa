import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { ListedToken } from '@/lib/records/token/list-tokens.query';
import { formatDate } from '../format/date-text';
import { formatInstant } from '../format/instant-text';
import { lastWholeDay } from '../format/last-whole-day';
import { Link } from '../page/link';
import { Status } from '../page/status';
import { DataTable } from '../table/data-table';

type Props = {
  readonly caption: string;
  readonly tokens: readonly ListedToken[];
  readonly timeZone: string;
  /** Whether the table says whose each token is. */
  readonly named: boolean;
};

/** Tokens by name, never the secret: what each may do, when it was used last, and the way to withdraw it. */
export async function TokenTable({ caption, tokens, timeZone, named }: Props) {
  const t = await getTranslations('api.tokens');
  const locale = await getLocale();
  const stateOf = (token: ListedToken) => {
    if (token.state !== 'works') return <Status tone="plain" word={t(`state.${token.state}`)} />;
    const word =
      token.expiresAt === null
        ? t('state.works')
        : t('state.worksUntil', { date: formatDate(lastWholeDay(token.expiresAt, timeZone), locale) });
    return <Status tone="good" word={word} />;
  };
  return (
    <DataTable
      caption={caption}
      rows={tokens}
      rowKey={({ id }) => id}
      columns={[
        { key: 'name', header: t('columns.name'), cell: ({ name }) => name },
        ...(named
          ? [
              {
                key: 'person',
                header: t('columns.person'),
                cell: (token: ListedToken) => token.personName || t('erased'),
              },
            ]
          : []),
        { key: 'begins', header: t('columns.begins'), cell: ({ prefix }) => <code>{prefix}</code> },
        { key: 'may', header: t('columns.may'), cell: (token) => t(token.mayWrite ? 'write' : 'read') },
        {
          key: 'sites',
          header: t('columns.sites'),
          cell: ({ siteIds, siteNames }) => (siteIds.length === 0 ? t('everySite') : siteNames.join(', ')),
        },
        {
          key: 'made',
          header: t('columns.made'),
          cell: ({ createdAt }) => formatInstant(createdAt, timeZone, locale),
        },
        {
          key: 'lastUsed',
          header: t('columns.lastUsed'),
          cell: ({ lastUsedOn }) => (lastUsedOn === null ? t('never') : formatDate(lastUsedOn, locale)),
        },
        {
          key: 'state',
          header: t('columns.state'),
          cell: (token) => (
            <>
              {stateOf(token)}{' '}
              {token.state === 'works' ? (
                <Link
                  href={`/account/tokens/${token.id}/withdraw` as Route}
                  aria-label={t('withdrawNamed', { name: token.name })}
                >
                  {t('withdraw')}
                </Link>
              ) : null}
            </>
          ),
        },
      ]}
    />
  );
}
