import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';

export const substrateLotInclude = {
  material: true,
  receipts: { where: { voidedAt: null }, include: { site: true }, orderBy: { receivedOn: 'asc' } },
} satisfies Prisma.SubstrateLotInclude;

type Row = Prisma.SubstrateLotGetPayload<{ include: typeof substrateLotInclude }>;

export function substrateLotView(row: Row) {
  return {
    id: row.id,
    revision: row.revision,
    code: row.code,
    materialId: row.materialId,
    material: { en: row.material.nameEn, es: row.material.nameEs },
    sourceName: row.sourceName,
    receivedOn: asCalendarDate(row.receivedOn),
    receivedGrams: row.receivedGrams,
    moisturePercent: row.moisturePercent === null ? null : Number(row.moisturePercent),
    moistureSource: row.moistureSource,
    cutLengthMm: row.cutLengthMm,
    note: row.note,
    createdById: row.createdById,
    voided: row.voidedAt === null ? null : { reason: row.voidReason ?? '' },
    receipts: row.receipts.map((receipt) => ({
      id: receipt.id,
      siteName: receipt.site.name,
      receivedOn: asCalendarDate(receipt.receivedOn),
      grams: receipt.grams,
    })),
  };
}

/** A lot of material as screens show it; masses in grams, moisture in percent wet basis. */
export type SubstrateLotView = ReturnType<typeof substrateLotView>;
