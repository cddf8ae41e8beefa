/** The query of an address, as a page gets it. */
export type Address = Readonly<Record<string, string | string[] | undefined>>;

/** What an address gives, each name once; what is empty counts as not given. */
export function givenOnce(query: Address): Readonly<Record<string, string | undefined>> {
  const single = Object.entries(query).map(([name, value]) => [
    name,
    Array.isArray(value) ? value[0] : value,
  ]);
  return Object.fromEntries(single.filter(([, value]) => value?.trim() !== ''));
}
