import { redirect } from 'next/navigation';
import type { FormSite, FormSites } from '@/lib/records/site/list-form-sites.query';
import type { SitePurpose } from '@/lib/records/site/site-choice.input';
import { type OtherSite, otherSite } from '@/lib/ui/sites/other-site';
import { siteChoiceAddress } from '@/lib/ui/sites/site-choice-address';

type Box = { readonly sites: readonly FormSite[]; readonly other: OtherSite | undefined };

/**
 * The box of sites of a form for a new record. Where there are too many to list and it is not known which one the form is
 * for, that is asked before anything can be typed. `form` is the whole address of the form.
 */
export async function siteFirst(
  found: FormSites,
  form: string,
  siteFor: SitePurpose = 'record',
): Promise<Box> {
  if (found.many && found.chosen === undefined) redirect(siteChoiceAddress(form, siteFor));
  return { sites: found.sites, other: await otherSite(found, form, siteFor) };
}
