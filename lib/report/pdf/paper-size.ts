/** Countries where printers hold US Letter; elsewhere it is ISO A4 (Unicode CLDR, supplemental paper size). */
const letterCountries = ['BZ', 'CA', 'CL', 'CO', 'CR', 'GT', 'MX', 'NI', 'PA', 'PH', 'PR', 'SV', 'US', 'VE'];

export type PaperSize = 'A4' | 'LETTER';

/** The paper of a reader's region, for instance 'en-US' or 'es-ES'. */
export function paperSize(locale: string): PaperSize {
  const country = /-([A-Z]{2})$/.exec(locale)?.[1];
  return country !== undefined && letterCountries.includes(country) ? 'LETTER' : 'A4';
}
