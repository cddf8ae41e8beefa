import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { getTrace } from '../trace/get-trace.query';
import type { TracePart } from '../trace/trace-view';
import type { NoticedKind } from './lot-notice.input';

export type NoticeSites = {
  readonly lotCode: string;
  readonly what: { readonly en: string; readonly es: string } | null;
  /** Open sites by name, with how many batches there were made with the lot itself, second lives too. */
  readonly sites: readonly {
    readonly id: string;
    readonly name: string;
    readonly batches: number;
    readonly open: number;
    /** Batches there of spawn made from the lot, and how many of these stand. */
    readonly made: { readonly batches: number; readonly open: number };
    /** Whether the site recorded a receipt of the lot. */
    readonly received: boolean;
  }[];
  /** Names of sites that had some of the lot, or of spawn made from it, and have left the network: no notice reaches them. */
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
  const asked = sites.map(({ id, name, leftAt }) => {
    return {
      ...{ id, name, left: leftAt !== null, ...counted(trace.own, id) },
      made: trace.made === null ? { batches: 0, open: 0 } : counted(trace.made, id),
      received: receipts.some(({ siteId }) => siteId === id),
    };
  });
  return {
    lotCode: trace.start.code ?? '',
    what: trace.start.what,
    sites: asked.flatMap(({ left, ...site }) => (left ? [] : [site])),
    left: asked.flatMap(({ left, name, batches, made, received }) =>
      left && (batches > 0 || made.batches > 0 || received) ? [name] : [],
    ),
  };
}

function counted({ batches }: TracePart, site: string) {
  const there = batches.filter(({ siteId }) => siteId === site);
  return { batches: there.length, open: there.filter(({ closedOn }) => closedOn === null).length };
}
