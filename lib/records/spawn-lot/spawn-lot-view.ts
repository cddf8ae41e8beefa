import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';

export const spawnLotInclude = {
  species: true,
  parent: true,
  receipts: { where: { voidedAt: null }, include: { site: true }, orderBy: { receivedOn: 'asc' } },
} satisfies Prisma.SpawnLotInclude;

type Row = Prisma.SpawnLotGetPayload<{ include: typeof spawnLotInclude }>;

const dateOrNull = (date: Date | null) => (date === null ? null : asCalendarDate(date));

export function spawnLotView(row: Row) {
  return {
    id: row.id,
    revision: row.revision,
    code: row.code,
    speciesId: row.speciesId,
    species: { en: row.species.nameEn, es: row.species.nameEs, scientific: row.species.scientificName },
    strain: row.strain,
    form: row.form,
    maker: row.maker,
    makerCode: row.makerCode,
    madeOn: dateOrNull(row.madeOn),
    receivedOn: dateOrNull(row.receivedOn),
    receivedGrams: row.receivedGrams,
    parent: row.parent === null ? null : { id: row.parent.id, code: row.parent.code },
    cultureName: row.cultureName,
    generation: row.generation,
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

/** A spawn lot as screens show it; masses in grams, generation counted from the culture. */
export type SpawnLotView = ReturnType<typeof spawnLotView>;
