import type { z } from 'zod';
import { ok, type Result } from '@/lib/base/result';
import { minorOf } from '../programme/network-currency';
import type { noteCostInput } from './cost.input';

type Amounts = Pick<z.output<typeof noteCostInput>, 'supplies' | 'fuel' | 'water'>;

/** The amounts of a form in minor units; what was left out stays left out. */
export function minorColumns(amounts: Amounts, currency: string) {
  const columns = { supplies: null, fuel: null, water: null } as Record<keyof Amounts, number | null>;
  for (const field of ['supplies', 'fuel', 'water'] as const) {
    const amount = amounts[field];
    if (amount === null) continue;
    const minor = minorOf(field, amount, currency);
    if (minor.kind !== 'ok') return minor;
    columns[field] = minor.value;
  }
  const { supplies, fuel, water } = columns;
  return ok({ suppliesMinor: supplies, fuelMinor: fuel, waterMinor: water }) satisfies Result<object>;
}
