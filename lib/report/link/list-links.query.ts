import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { LinkForm } from './open-link';

export type LinkVisit = { readonly form: LinkForm; readonly at: string };

/** A link and when it was opened; the link itself was shown once and is not kept. */
export type LinkView = {
  readonly id: string;
  readonly forWhom: string;
  readonly language: 'en' | 'es';
  readonly expiresAt: string;
  readonly withdrawnAt: string | undefined;
  readonly visits: number;
  readonly latest: readonly LinkVisit[];
};

const latestVisits = 20;

/** The links of a report, latest first; for coordinators. */
export async function listLinks({ db }: ReadContext, reportId: string): Promise<LinkView[]> {
  const rows = await db.reportLink.findMany({
    where: { reportId },
    orderBy: { id: 'desc' },
    include: {
      _count: { select: { visits: true } },
      visits: { orderBy: { id: 'desc' }, take: latestVisits, select: { createdAt: true, form: true } },
    },
  });
  return rows.map(({ id, forWhom, language, expiresAt, voidedAt, visits, _count }) => ({
    ...{ id, forWhom, language },
    expiresAt: expiresAt.toISOString(),
    withdrawnAt: voidedAt?.toISOString(),
    visits: _count.visits,
    latest: visits.map(({ form, createdAt }) => ({ form: form as LinkForm, at: createdAt.toISOString() })),
  }));
}
