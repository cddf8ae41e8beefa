import type { z } from 'zod';
import { type Failure, invalid } from '@/lib/base/result';
import { asDate } from '../fields/stored-date';
import type { addSiteInput } from './site.input';

type SiteFields = Omit<z.output<typeof addSiteInput>, 'id'>;

/** The columns of a site from its form. */
export function siteRow({ code, name, kind, timeZone, trimDefault, openedOn, closedOn, note }: SiteFields) {
  return {
    code,
    name,
    kind,
    timeZone,
    trimDefault,
    openedOn: openedOn === null ? null : asDate(openedOn),
    closedOn: closedOn === null ? null : asDate(closedOn),
    note,
  };
}

export function siteDatesProblem({ openedOn, closedOn }: SiteFields): Failure | undefined {
  return openedOn !== null && closedOn !== null && closedOn < openedOn
    ? invalid('closedOn', 'before', { date: openedOn })
    : undefined;
}
