import { getTranslations } from 'next-intl/server';
import { memberRoles } from '@/lib/records/person/invite-person.input';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

type SiteChoice = { readonly id: string; readonly name: string };

/** Role with what it may do, and the sites of a member. */
export async function roleFields(sites: readonly SiteChoice[]): Promise<FieldSpec[]> {
  const t = await getTranslations('people');
  const words = await getTranslations('vocabulary.membershipRole');
  return [
    {
      kind: 'radio',
      name: 'role',
      label: sentenceCase(t('fields.role')),
      options: memberRoles.map((role) => ({ value: role, label: words(role), hint: t(`roleHint.${role}`) })),
    },
    {
      kind: 'several',
      name: 'siteIds',
      label: sentenceCase(t('fields.siteIds')),
      hint: t('siteHint'),
      options: sites.map((site) => ({ value: site.id, label: site.name })),
    },
  ];
}

export async function inviteFields(sites: readonly SiteChoice[]): Promise<FieldSpec[]> {
  const t = await getTranslations('people');
  return [
    { kind: 'text', name: 'forName', label: sentenceCase(t('fields.forName')), optional: true },
    {
      kind: 'email',
      name: 'forEmail',
      label: sentenceCase(t('fields.forEmail')),
      hint: t('emailHint'),
      autoComplete: 'off',
      optional: true,
    },
    ...(await roleFields(sites)),
  ];
}
