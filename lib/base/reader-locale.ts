/** Language of the words and region of the numbers, chosen apart from each other. */
export type ReaderLanguage = { readonly language: 'en' | 'es'; readonly region: string };

/**
 * BCP 47 tag that joins the reader's language with the country of their region: Spanish words with United States
 * figures are `es-US` (1,234.5), English words in Spain `en-ES`. A region without a country gives the language alone.
 */
export function readerLocale({ language, region }: ReaderLanguage): string {
  const country = /-([A-Z]{2}|\d{3})$/.exec(region)?.[1];
  return country === undefined ? language : `${language}-${country}`;
}
