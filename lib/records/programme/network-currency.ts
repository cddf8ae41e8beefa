import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type Failure, invalid, ok, type Result } from '@/lib/base/result';
import { minorText, mostMinor, toMinor } from '@/lib/growing/money';

/** The currency in which the network writes down money from now on. */
export async function networkCurrency({ db, actor }: ReadContext): Promise<string> {
  const network = await db.network.findFirstOrThrow({
    where: { id: actor.networkId },
    select: { currency: true },
  });
  return network.currency.trim();
}

/** Minor units of an amount that a form gave in main units, or why that cannot be. */
export function minorOf(field: string, amount: number, currency: string): Result<number> {
  const minor = toMinor(amount, currency);
  return minor === null ? tooFine(field, amount, currency) : ok(minor);
}

function tooFine(field: string, amount: number, currency: string): Failure {
  const most = minorText(mostMinor, currency);
  return amount > Number(most)
    ? invalid(field, 'too-large', { max: most })
    : invalid(field, 'money-too-fine', { currency });
}
