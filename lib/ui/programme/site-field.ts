import type { SiteView } from '@/lib/records/site/site-view';
import type { FieldSpec } from '../form/field-spec';

/** Which site a new record belongs to. */
export function siteField(sites: readonly SiteView[], label: string): FieldSpec {
  return {
    kind: 'select',
    name: 'siteId',
    label,
    options: sites.map(({ id, name }) => ({ value: id, label: name })),
  };
}

/** What a form asks besides when a record is new (its site) and when it is put right (the reason). */
export type FormKind =
  | { readonly kind: 'add'; readonly sites: readonly SiteView[] }
  | { readonly kind: 'correct' };
