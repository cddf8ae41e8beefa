import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SheetLayout } from '@/lib/labels/sheet/sheet-layout';

/** A sheet that the network keeps besides the ready ones. */
export type OwnSheet = SheetLayout & {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
  /** Whether the reader may change it: the coordinator, or whoever added it. */
  readonly own: boolean;
};

/** The network's own label sheets, by name. */
export async function listLabelSheets({ db, actor }: ReadContext): Promise<OwnSheet[]> {
  const rows = await db.labelSheet.findMany({ where: { voidedAt: null }, orderBy: { name: 'asc' } });
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    revision: row.revision,
    own: actor.role === 'coordinator' || row.createdById === actor.personId,
    pageWidthMm: Number(row.pageWidthMm),
    pageHeightMm: Number(row.pageHeightMm),
    labelWidthMm: Number(row.labelWidthMm),
    labelHeightMm: Number(row.labelHeightMm),
    columns: row.columns,
    rows: row.rows,
    leftMm: Number(row.leftMm),
    topMm: Number(row.topMm),
    gapAcrossMm: Number(row.gapAcrossMm),
    gapDownMm: Number(row.gapDownMm),
  }));
}
