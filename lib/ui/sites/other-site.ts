import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { FormSites } from '@/lib/records/site/list-form-sites.query';
import type { SitePurpose } from '@/lib/records/site/site-choice.input';
import { siteChoiceAddress } from './site-choice-address';

/** The way from the box of a form to a site that it does not list. */
export type OtherSite = { readonly href: Route; readonly text: string; readonly note: string };

/** Undefined where the box lists every site. `form` is the whole address of the form. */
export async function otherSite(
  { many, sites }: FormSites,
  form: string,
  siteFor: SitePurpose = 'record',
): Promise<OtherSite | undefined> {
  if (!many) return undefined;
  const t = await getTranslations('sites.search');
  return {
    href: siteChoiceAddress(form, siteFor),
    text: t(sites.length === 0 ? 'heading' : 'other'),
    note: t('otherNote'),
  };
}
