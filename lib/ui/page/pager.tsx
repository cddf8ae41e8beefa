import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { StepLinks } from './step-links';

type Props = { readonly newer?: Route | undefined; readonly older?: Route | undefined };

/** Steps through a long list by address. */
export async function Pager({ newer, older }: Props) {
  if (newer === undefined && older === undefined) return null;
  const t = await getTranslations('common');
  return (
    <StepLinks
      {...(newer === undefined ? {} : { previous: { href: newer, label: t('newer') } })}
      {...(older === undefined ? {} : { next: { href: older, label: t('older') } })}
    />
  );
}
