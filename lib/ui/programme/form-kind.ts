import type { SiteBox } from '../sites/site-select';

/** What a form asks besides when a record is new (its site) and when it is put right (the reason). */
export type FormKind = { readonly kind: 'add'; readonly site: SiteBox } | { readonly kind: 'correct' };
