import type { Route } from 'next';
import type { SitePurpose } from '@/lib/records/site/site-choice.input';

/** Where the site of a form is looked for; its whole address comes along and is gone on to with the site in it. */
export function siteChoiceAddress(form: string, siteFor: SitePurpose): Route {
  return `/sites/choose?${new URLSearchParams({ next: form, siteFor })}` as Route;
}
