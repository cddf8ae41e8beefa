import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { secondLifeEnds } from '../batch/moved-units';
import { inParts } from './in-parts';
import type { TraceEnd, TraceLink } from './trace-link';

type Voiding = { readonly voidedAt: Date | null; readonly voidReason: string | null };

/** Why one of several records is voided: the first that is, with its reason. */
function voidedBy(...records: readonly Voiding[]): string | null {
  const voided = records.find(({ voidedAt }) => voidedAt !== null);
  return voided === undefined ? null : (voided.voidReason ?? '');
}

type Part = Voiding & { readonly batchId: string; readonly grams: number | null; readonly batch: Voiding };

function batchLink(from: TraceEnd, part: Part, source: Voiding): TraceLink {
  return {
    from,
    to: { kind: 'batch', id: part.batchId },
    amount: part.grams,
    voided: voidedBy(source, part.batch, part),
  };
}

/** A spawn lot that went into a batch. */
export function shareLink(share: Part & { readonly spawnLotId: string; readonly lot: Voiding }): TraceLink {
  return batchLink({ kind: 'spawn-lot', id: share.spawnLotId }, share, share.lot);
}

type Lot = Voiding & { readonly id: string; readonly parentLotId: string | null };

/** A lot that spawn was made from. */
export function descentLinks(lots: readonly (Lot & { readonly parent: Voiding | null })[]): TraceLink[] {
  return lots.flatMap((lot) =>
    lot.parentLotId === null || lot.parent === null
      ? []
      : [
          {
            from: { kind: 'spawn-lot', id: lot.parentLotId },
            to: { kind: 'spawn-lot', id: lot.id },
            amount: null,
            voided: voidedBy(lot.parent, lot),
          },
        ],
  );
}

type Component = Part & {
  readonly substrateLotId: string;
  readonly lot: Voiding;
  readonly treatmentRunId: string | null;
  readonly run: Voiding | null;
};

/** Materials, or the runs that treated them, that went into batches. */
export function componentLinks(
  kind: 'substrate-lot' | 'treatment',
  components: readonly Component[],
): TraceLink[] {
  return components.flatMap((part) => {
    if (kind === 'substrate-lot') return [batchLink({ kind, id: part.substrateLotId }, part, part.lot)];
    const { treatmentRunId: id, run } = part;
    return id === null || run === null ? [] : [batchLink({ kind, id }, part, run)];
  });
}

type Line = Voiding & {
  readonly batchId: string;
  readonly weighingId: string;
  readonly freshGrams: number;
  readonly weighing: Voiding;
  readonly batch: Voiding;
};

/** A batch that was picked into a weighing. */
export function lineLink(line: Line): TraceLink {
  return {
    from: { kind: 'batch', id: line.batchId },
    to: { kind: 'weighing', id: line.weighingId },
    amount: line.freshGrams,
    voided: voidedBy(line.batch, line.weighing, line),
  };
}

type Source = Voiding & {
  readonly batchId: string;
  readonly sourceBatchId: string;
  readonly unitsMoved: number;
};

/**
 * Units that went on to a second life. Of a second life out of the actor's sight only whether it stands is known, and its
 * reason is not told.
 */
export async function sourceLinks(db: ScopedDb, sources: readonly Source[]): Promise<TraceLink[]> {
  const ids = new Set(sources.flatMap(({ batchId, sourceBatchId }) => [batchId, sourceBatchId]));
  const rows = await inParts([...ids], (part) =>
    db.batch.findMany({
      where: { id: { in: part } },
      select: { id: true, voidedAt: true, voidReason: true },
    }),
  );
  const seen = new Map(rows.map((batch) => [batch.id, batch]));
  const links: TraceLink[] = [];
  for (const source of sources) {
    const end = seen.get(source.batchId);
    const first = seen.get(source.sourceBatchId);
    const gone =
      end === undefined &&
      source.voidedAt === null &&
      !(await secondLifeEnds({ db }, source.sourceBatchId)).some(({ batchId }) => batchId === source.batchId);
    links.push({
      from: { kind: 'batch', id: source.sourceBatchId },
      to: { kind: 'batch', id: source.batchId },
      amount: source.unitsMoved,
      voided: gone ? '' : voidedBy(...[first, end].filter((batch) => batch !== undefined), source),
    });
  }
  return links;
}
