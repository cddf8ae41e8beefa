import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type SaleView, saleInclude, saleView } from './sale-view';

export async function getSale({ db }: ReadContext, id: string): Promise<SaleView | undefined> {
  const row = await db.sale.findFirst({ where: { id }, include: saleInclude });
  return row ? saleView(row) : undefined;
}
