/** An amount of money: whole minor units (cents, or yen where there are none) of an ISO 4217 currency. */
export type Money = { readonly minor: number; readonly currency: string };

const code = /^[A-Z]{3}$/;
/** Largest amount that a record keeps, in minor units: what a 32-bit whole number holds. */
export const mostMinor = 2_147_483_647;

/** True for three capital letters that this machine knows as a currency. */
export function isCurrency(currency: string): boolean {
  return code.test(currency) && Intl.supportedValuesOf('currency').includes(currency);
}

/** Decimal places of a currency, 0 to 4: USD 2, JPY 0, KWD 3 (ISO 4217, by the engine's own table). */
export function currencyDigits(currency: string): number {
  const format = new Intl.NumberFormat('en', { style: 'currency', currency });
  return format.resolvedOptions().maximumFractionDigits ?? 2;
}

/**
 * Whole minor units of an amount typed in main units (12.5 dollars are 1250). Null when it is finer than the currency,
 * negative, no finite number or more than a record keeps.
 */
export function toMinor(amount: number, currency: string): number | null {
  if (!Number.isFinite(amount) || amount < 0) return null;
  const digits = currencyDigits(currency);
  const minor = Number(`${amount}e${digits}`);
  return Number.isInteger(minor) && minor <= mostMinor ? minor : null;
}

/** An amount in main units as text with a point and all its decimals: 1250 cents are "12.50". */
export function minorText(minor: number, currency: string): string {
  const digits = currencyDigits(currency);
  if (digits === 0) return String(minor);
  const text = String(Math.abs(minor)).padStart(digits + 1, '0');
  return `${minor < 0 ? '-' : ''}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}
