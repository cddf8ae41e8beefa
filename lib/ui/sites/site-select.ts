import type { FieldSpec } from '../form/field-spec';
import type { OtherSite } from './other-site';

/** The sites that a form offers. */
export type SiteBox = {
  readonly sites: readonly { readonly id: string; readonly name: string }[];
  /** Where these are not all. */
  readonly other?: OtherSite | undefined;
};

/** At which site something is recorded. */
export function siteSelect({ sites, other }: SiteBox, label: string): Extract<FieldSpec, { kind: 'select' }> {
  return {
    kind: 'select',
    name: 'siteId',
    label,
    options: sites.map(({ id, name }) => ({ value: id, label: name })),
    ...(other === undefined ? {} : { notListed: other }),
  };
}
