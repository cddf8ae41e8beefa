import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok } from '@/lib/base/result';
import { asDate } from '../fields/stored-date';
import { minorOf } from '../programme/network-currency';
import { refuseFuture, siteOfRecord } from '../programme/site-of-record';
import type { recordSaleInput } from './sale.input';

type Sale = Omit<z.output<typeof recordSaleInput>, 'id'>;

/** The columns of a sale from its form, or why they cannot be; amounts in minor units of `currency`. */
export async function prepareSale(context: WriteContext, input: Sale, currency: string) {
  const site = await siteOfRecord(context, input.siteId);
  if (!site) return notFound;
  const future = refuseFuture('soldOn', input.soldOn, site, context);
  if (future) return future;
  const amount = minorOf('amount', input.amount, currency);
  if (amount.kind !== 'ok') return amount;
  const { outlet, mass, customers, note } = input;
  return ok({
    soldOn: asDate(input.soldOn),
    ...{ outlet, grams: mass, amountMinor: amount.value, currency, customers, note },
  });
}
