import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { MembershipRole } from '@/lib/database/generated/enums';
import { ButtonLink } from './button-link';
import { EmptyState } from './empty-state';
import { Heading } from './heading';

type Props = {
  readonly heading: string;
  /** What has to be there before the form can be filled in. */
  readonly need: 'site' | 'material';
  readonly role: MembershipRole;
};

/** Instead of a form that could not be saved yet: what to do first, or whom to ask. */
export async function FirstStep({ heading, need, role }: Props) {
  const t = await getTranslations('common.firstStep');
  const asks = need === 'site' && role !== 'coordinator';
  return (
    <>
      <Heading text={heading} />
      <EmptyState text={t(asks ? 'siteOfMember' : need)}>
        {asks ? undefined : (
          <ButtonLink href={(need === 'site' ? '/sites/new' : '/substrate-lots/new') as Route}>
            {t(`${need}Link`)}
          </ButtonLink>
        )}
      </EmptyState>
    </>
  );
}
