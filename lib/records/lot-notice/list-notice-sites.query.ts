import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { getTrace } from '../trace/get-trace.query';
import type { NoticedKind } from './lot-notice.input';

export type NoticeSites = {
  readonly lotCode: string;
  readonly what: { readonly en: string; readonly es: string } | null;
  /** Open sites by name, with how many batches there come from the lot, second lives too. */
  readonly sites: readonly {
    readonly id: string;
    readonly name: string;
    readonly batches: number;
    readonly open: number;
    /** Whether the site recorded a receipt of the lot. */
    readonly received: boolean;
  }[];
  /** Names of sites that had some of the lot and have left the network: no notice reaches them. */
  readonly left: readonly string[];
};

/** Whom a notice about a lot concerns; undefined for a lot that is not there or voided, and for anybody but the coordinator. */
export async function listNoticeSites(
  context: ReadContext,
  kind: NoticedKind,
  lotId: string,
): Promise<NoticeSites | undefined> {
  const { db, actor } = context;
  if (actor.role !== 'coordinator') return undefined;
  const trace = await getTrace(context, kind, lotId);
  if (trace === undefined || trace.start.voided !== null) return undefined;
  const sites = await db.site.findMany({ where: { voidedAt: null }, orderBy: { name: 'asc' } });
  const select = { siteId: true } as const;
  const receipts =
    kind === 'spawn-lot'
      ? await db.spawnReceipt.findMany({ where: { spawnLotId: lotId, voidedAt: null }, select })
      : await db.substrateReceipt.findMany({ where: { substrateLotId: lotId, voidedAt: null }, select });
  const { batches } = trace.on;
  const asked = sites.map(({ id, name, leftAt }) => {
    const own = batches.filter(({ siteId }) => siteId === id);
    return {
      ...{ id, name, left: leftAt !== null, batches: own.length },
      open: own.filter(({ closedOn }) => closedOn === null).length,
      received: receipts.some(({ siteId }) => siteId === id),
    };
  });
  return {
    lotCode: trace.start.code ?? '',
    what: trace.start.what,
    sites: asked.flatMap(({ left, ...site }) => (left ? [] : [site])),
    left: asked.flatMap(({ left, name, batches, received }) =>
      left && (batches > 0 || received) ? [name] : [],
    ),
  };
}
