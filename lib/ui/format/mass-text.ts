import { massEcho } from '@/lib/growing/format-quantity';

/** A mass in the reader's unit with its twin in brackets: "1.36 kg (3 lb 0 oz)". */
export function formatMassWithTwin(grams: number, unit: 'kg' | 'lb', locale: string): string {
  const { own, twin } = massEcho(grams, unit, locale);
  return `${own} (${twin})`;
}
