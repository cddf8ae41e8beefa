/** Labels row by row, each different one written once: a thread is given copies of all it is given. */
export type PackedLabels = { readonly labels: readonly string[]; readonly places: Uint32Array };

export function packLabels(values: readonly string[]): PackedLabels {
  const placeOf = new Map<string, number>();
  const places = Uint32Array.from(values, (value) => {
    const known = placeOf.get(value);
    if (known !== undefined) return known;
    placeOf.set(value, placeOf.size);
    return placeOf.size - 1;
  });
  return { labels: [...placeOf.keys()], places };
}

export function unpackLabels({ labels, places }: PackedLabels): string[] {
  return Array.from(places, (place) => labels[place] ?? '');
}
