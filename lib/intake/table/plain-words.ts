/** Words as they are compared: lower case, without accents, signs and units in brackets; "Fecha_de cosecha (kg)" is "fecha de cosecha", "N.º de bolsas" is "no de bolsas". */
export function plainWords(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/\([^)]*\)|\[[^\]]*\]/g, ' ')
    .toLowerCase()
    .replace(/(?<!\p{L})n\s*\.?\s*[º°]/gu, 'no ')
    .replace(/[^\p{L}\p{N}%#]+/gu, ' ')
    .trim();
}

function parts(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** The written form of a code, whatever signs are between its words and numbers: "ktr7" and "KTR-7" are one, "1-12" and "11-2" two. */
export function codeForm(text: string): string {
  return parts(text)
    .replace(/(\p{L})(?=\p{N})/gu, '$1 ')
    .replace(/(\p{N})(?=\p{L})/gu, '$1 ');
}

/** A name without any blanks but those between two numbers, for what is written together here and apart there: "mill lane" and "Mill-Lane". */
export function plainCode(text: string): string {
  return parts(text).replace(/(?<!\p{N}) | (?!\p{N})/gu, '');
}
