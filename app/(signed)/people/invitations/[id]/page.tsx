import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getInvitation } from '@/lib/records/person/get-invitation.query';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { NewLinkForm } from '@/lib/ui/people/new-link-form';
import { renewInvitationAction, withdrawInvitationAction } from '../actions';

export default async function InvitationPage({ params }: PageProps<'/people/invitations/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const invitation = isId(id)
    ? await readAs(actor, (context) => getInvitation(context, id, new Date()))
    : undefined;
  if (!invitation) return <NotThere />;
  const t = await getTranslations('people');
  const common = await getTranslations('common');
  const words = await getTranslations('vocabulary.membershipRole');
  const { email, role, siteNames } = invitation;
  const name = invitation.name ?? email ?? t('invitations.unnamed');
  return (
    <>
      <p>
        <Link href={'/people/invitations' as Route}>{t('invitations.back')}</Link>
      </p>
      <Heading text={t('invitations.one', { name })} />
      <p className="quiet">
        {[email, words(role), ...siteNames].filter((part) => part !== null).join(' · ')}
      </p>
      <p>{t('invitations.oneIntro')}</p>
      <NewLinkForm
        action={renewInvitationAction.bind(null, id, name)}
        submitLabel={t('invitations.newLink')}
        saving={common('saving')}
        shownOnce={t('invitations.shownOnce')}
        noAnswer={t('invitations.noAnswerLink')}
      />
      <details className="mt-10">
        <summary>{t('invitations.withdraw')}</summary>
        <p>{t('invitations.withdrawIntro')}</p>
        <form action={withdrawInvitationAction.bind(null, id)}>
          <button type="submit" className="button button-bad">
            {t('invitations.withdraw')}
          </button>
        </form>
      </details>
    </>
  );
}
