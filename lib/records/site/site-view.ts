import type { Site } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';

export type SiteView = {
  readonly id: string;
  readonly revision: number;
  readonly code: string;
  readonly name: string;
  readonly kind: Site['kind'];
  readonly timeZone: string;
  readonly trimDefault: Site['trimDefault'];
  readonly openedOn: string | null;
  readonly closedOn: string | null;
  readonly note: string | null;
  /** The site has left the network. */
  readonly left: { readonly at: string; readonly figures: 'counted' | 'withdrawn' } | null;
  readonly voided: { readonly reason: string } | null;
};

export function siteView(site: Site): SiteView {
  return {
    id: site.id,
    revision: site.revision,
    code: site.code,
    name: site.name,
    kind: site.kind,
    timeZone: site.timeZone,
    trimDefault: site.trimDefault,
    openedOn: site.openedOn === null ? null : asCalendarDate(site.openedOn),
    closedOn: site.closedOn === null ? null : asCalendarDate(site.closedOn),
    note: site.note,
    left:
      site.leftAt === null
        ? null
        : { at: site.leftAt.toISOString(), figures: site.figuresWithdrawn ? 'withdrawn' : 'counted' },
    voided: site.voidedAt === null ? null : { reason: site.voidReason ?? '' },
  };
}
