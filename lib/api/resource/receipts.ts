import { z } from 'zod';
import { date, type Filters, id, identity, note, resource, voided, voidedOf } from './resource';
import { siteIdTold, withSitesTold } from './site-told';
import { day } from './told';

const told = { siteId: siteIdTold, receivedOn: date, massGrams: z.int(), note, voided };

const asked = ({ site }: Filters) => (site === undefined ? {} : { siteId: site });

type Receipt = {
  readonly id: string;
  readonly revision: number;
  readonly receivedOn: Date;
  readonly grams: number;
  readonly note: string | null;
  readonly voidedAt: Date | null;
  readonly voidReason: string | null;
};
const receipt = (row: Receipt) => ({
  ...{ id: row.id, revision: row.revision, receivedOn: day(row.receivedOn), massGrams: row.grams },
  ...{ note: row.note, voided: voidedOf(row) },
});

export const substrateReceipts = resource({
  name: 'substrate-receipts',
  one: 'a receipt of material',
  about: 'Part of a substrate lot that came to a site.',
  schema: z.object({ ...identity, substrateLotId: id, ...told }),
  filters: { site: id, lot: id },
  rows: async (context, where, page, { lot, ...filters }) =>
    withSitesTold(
      context,
      await context.db.substrateReceipt.findMany({
        where: { ...where, ...asked(filters), ...(lot === undefined ? {} : { substrateLotId: lot }) },
        ...page,
      }),
    ),
  tell: (row) => ({ ...receipt(row), substrateLotId: row.substrateLotId, siteId: row.siteId }),
});

export const spawnReceipts = resource({
  name: 'spawn-receipts',
  one: 'a receipt of spawn',
  about: 'Part of a spawn lot that came to a site.',
  schema: z.object({ ...identity, spawnLotId: id, ...told }),
  filters: { site: id, lot: id },
  rows: async (context, where, page, { lot, ...filters }) =>
    withSitesTold(
      context,
      await context.db.spawnReceipt.findMany({
        where: { ...where, ...asked(filters), ...(lot === undefined ? {} : { spawnLotId: lot }) },
        ...page,
      }),
    ),
  tell: (row) => ({ ...receipt(row), spawnLotId: row.spawnLotId, siteId: row.siteId }),
});
