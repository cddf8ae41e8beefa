/** Words as they are compared: lower case, without accents, signs and units in brackets; "Fecha_de cosecha (kg)" is "fecha de cosecha". */
export function plainWords(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/\([^)]*\)|\[[^\]]*\]/g, ' ')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}%#]+/gu, ' ')
    .trim();
}

/** A code as it is compared: capitals without signs and blanks, so that "ktr 7" finds "KTR-7". */
export function plainCode(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .replace(/[^\p{L}\p{N}]+/gu, '');
}
