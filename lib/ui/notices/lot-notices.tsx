import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import type { LotNotice } from '@/lib/records/lot-notice/list-lot-notices.query';
import type { LotRef } from '@/lib/records/lot-notice/lot-of';
import { formatInstant } from '../format/instant-text';
import { ButtonLink } from '../page/button-link';
import { Link } from '../page/link';
import { MarkReadForm } from './mark-read-form';
import { NoticeText } from './notice-text';
import { noticedLotPath } from './noticed-lot-path';
import { ReadersTable } from './readers-table';

type Props = LotRef & {
  readonly notices: readonly LotNotice[];
  /** Whether the lot itself stands: nobody tells sites about a voided one. */
  readonly standing: boolean;
  readonly actor: Actor;
  readonly markRead: (data: FormData) => Promise<void>;
};

/** On a lot's page: what sites were told about it, who has read it, and for the coordinator a way to tell them. */
export async function LotNotices({ lotKind, lotId, notices, standing, actor, markRead }: Props) {
  const mayWrite = actor.role === 'coordinator' && standing;
  if (notices.length === 0 && !mayWrite) return null;
  const t = await getTranslations('notices');
  const locale = await getLocale();
  const when = (at: string) => formatInstant(new Date(at), actor.networkTimeZone, locale);
  return (
    <section>
      {notices.length === 0 ? null : <h2>{t('heading')}</h2>}
      {notices.map((notice) => (
        <article key={notice.id} className="signal">
          {notice.withdrawn === null ? (
            <NoticeText notice={notice} language={actor.language} naming={false} />
          ) : (
            <details>
              <summary>
                {t('wasWithdrawn', { when: when(notice.withdrawn.at), reason: notice.withdrawn.reason })}
              </summary>
              <NoticeText notice={notice} language={actor.language} naming={false} />
            </details>
          )}
          <p className="quiet">
            {t('at', { when: when(notice.at) })}
            {notice.readAt === null ? null : ` ${t('readAt', { when: when(notice.readAt) })}`}
          </p>
          {notice.readers === null ? null : (
            <details>
              <summary>
                {t('readers.summary', {
                  read: notice.readers.filter(({ read }) => read.length > 0).length,
                  sites: notice.readers.length,
                })}
              </summary>
              <ReadersTable readers={notice.readers} timeZone={actor.networkTimeZone} />
            </details>
          )}
          {notice.withdrawn === null && actor.role === 'coordinator' ? (
            <p className="record-links no-print">
              <Link
                href={`/lot-notices/${notice.id}/withdraw` as Route}
                aria-label={t('withdraw.linkOf', { when: when(notice.at) })}
              >
                {t('withdraw.link')}
              </Link>
            </p>
          ) : null}
          {notice.withdrawn === null && actor.role === 'member' && notice.readAt === null ? (
            <MarkReadForm notice={notice} back={`${noticedLotPath(notice)}?saved=read`} action={markRead} />
          ) : null}
        </article>
      ))}
      {mayWrite ? (
        <p className="no-print mt-4">
          <ButtonLink href={`/lot-notices/new/${lotKind}/${lotId}` as Route} plain>
            {t('new.link')}
          </ButtonLink>
        </p>
      ) : null}
    </section>
  );
}
