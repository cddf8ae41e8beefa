import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listInvitations } from '@/lib/records/person/list-invitations.query';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Pager } from '@/lib/ui/page/pager';
import { InvitationTable } from '@/lib/ui/people/invitation-table';
import { NewLinkForm } from '@/lib/ui/people/new-link-form';
import { firstLinksAction } from './actions';

export default async function InvitationsPage({ searchParams }: PageProps<'/people/invitations'>) {
  const actor = await requireActor('coordinator');
  const { after } = await searchParams;
  const { invitations, linkless, next } = await readAs(actor, (context) =>
    listInvitations(context, typeof after === 'string' ? after : null, new Date()),
  );
  const t = await getTranslations('people');
  const common = await getTranslations('common');
  return (
    <>
      <Heading text={t('invitations.heading')} />
      <p>{t('invitations.intro')}</p>
      <p className="chips">
        <ButtonLink href="/people/invite" plain>
          {t('invite')}
        </ButtonLink>
        <Link href={'/import?kind=people' as Route}>{t('invitations.bringIn')}</Link>
      </p>
      {/* Always the same form, so that the links just made stay in sight when none is left to make. */}
      <NewLinkForm
        action={firstLinksAction}
        submitLabel={linkless === 0 ? null : t('invitations.firstLinks', { count: linkless })}
        saving={common('saving')}
        shownOnce={t('invitations.shownOnce')}
        noAnswer={t('invitations.noAnswerLinks')}
      />
      {invitations.length === 0 ? (
        <p className="quiet">{t('invitations.none')}</p>
      ) : (
        <InvitationTable invitations={invitations} timeZone={actor.networkTimeZone} />
      )}
      <Pager older={next === undefined ? undefined : (`/people/invitations?after=${next}` as Route)} />
    </>
  );
}
