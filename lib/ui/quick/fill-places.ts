/** Puts values into the places of a sentence: "Harvest from {code}". Only for sentences without plurals. */
export function fillPlaces(sentence: string, values: Readonly<Record<string, string | number>>): string {
  return sentence.replace(/\{(\w+)\}/g, (place, name: string) =>
    Object.hasOwn(values, name) ? String(values[name]) : place,
  );
}
