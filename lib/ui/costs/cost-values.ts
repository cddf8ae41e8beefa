import { newId } from '@/lib/base/new-id';
import { readerLocale } from '@/lib/base/reader-locale';
import type { CostView } from '@/lib/records/cost/get-cost.query';
import type { LotPriceView } from '@/lib/records/cost/get-lot-price.query';
import { type MassReader, massValues } from '../form/mass-units';
import { moneyFieldText } from '../format/money-text';

/** What the form of costs starts from. */
export function costValues(view: CostView, reader: MassReader): Record<string, string> {
  const { note, currency } = view;
  if (note === null) return { id: newId() };
  const money = (minor: number | null) =>
    minor === null ? '' : moneyFieldText({ minor, currency }, readerLocale(reader));
  return {
    id: note.id,
    revision: String(note.revision),
    labourMinutes: note.labourMinutes === null ? '' : String(note.labourMinutes),
    supplies: money(note.suppliesMinor),
    fuel: money(note.fuelMinor),
    water: money(note.waterMinor),
    note: note.note ?? '',
  };
}

/** What the form of a lot's price starts from. */
export function lotPriceValues(view: LotPriceView, reader: MassReader): Record<string, string> {
  const { price, currency } = view;
  if (price === null) return { id: newId() };
  return {
    id: price.id,
    revision: String(price.revision),
    paid: moneyFieldText({ minor: price.paidMinor, currency }, readerLocale(reader)),
    ...massValues('mass', price.forGrams, reader),
  };
}
