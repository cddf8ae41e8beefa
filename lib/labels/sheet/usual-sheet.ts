import { type ReadySheet, readySheets } from './ready-sheets';

/** Countries that print on Letter (as the Unicode CLDR lists them, from memory); all others use A4. */
const letterCountries = new Set([
  'BZ',
  'CA',
  'CL',
  'CO',
  'CR',
  'GT',
  'MX',
  'NI',
  'PA',
  'PH',
  'PR',
  'SV',
  'US',
  'VE',
]);

/** The sheet proposed first to a reader of a region such as `en-US`. */
export function usualSheet(region: string): ReadySheet {
  const country = /-([A-Z]{2})$/.exec(region)?.[1] ?? '';
  const paper = letterCountries.has(country) ? 'letter' : 'a4';
  const sheet = readySheets.find((one) => one.paper === paper);
  if (!sheet) throw new Error(`no ready sheet of ${paper}`);
  return sheet;
}
