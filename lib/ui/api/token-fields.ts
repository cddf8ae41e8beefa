import { getTranslations } from 'next-intl/server';
import { tokenScopes } from '@/lib/records/token/token.input';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

type SiteChoice = { readonly id: string; readonly name: string };

/** What a new token is for, and how little it may do. */
export async function tokenFields(sites: readonly SiteChoice[]): Promise<FieldSpec[]> {
  const t = await getTranslations('api');
  return [
    {
      kind: 'text',
      name: 'name',
      label: sentenceCase(t('fields.name')),
      hint: t('make.nameHint'),
    },
    {
      kind: 'radio',
      name: 'scope',
      label: sentenceCase(t('fields.scope')),
      options: tokenScopes.map((value) => ({
        value,
        label: sentenceCase(t(`tokens.${value}`)),
        hint: t(`make.scopeHint.${value}`),
      })),
    },
    {
      kind: 'several',
      name: 'siteIds',
      label: sentenceCase(t('fields.siteIds')),
      hint: t('make.siteHint'),
      optional: true,
      options: sites.map(({ id, name }) => ({ value: id, label: name })),
    },
    {
      kind: 'date',
      name: 'worksUntil',
      label: sentenceCase(t('fields.worksUntil')),
      hint: t('make.worksUntilHint'),
      optional: true,
      quick: [],
    },
  ];
}

export async function withdrawFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('api');
  return [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
    { kind: 'text', name: 'reason', label: sentenceCase(t('fields.reason')) },
  ];
}
