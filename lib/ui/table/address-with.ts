type Address = Readonly<Record<string, string | readonly string[] | undefined>>;

/** A path with the filters of the present address and some of them changed; undefined takes one out. */
export function addressWith(path: string, address: Address, changes: Address): string {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries({ ...address, ...changes })) {
    if (value === undefined || value === '') continue;
    for (const one of typeof value === 'string' ? [value] : value) query.append(name, one);
  }
  const text = query.toString();
  return text === '' ? path : `${path}?${text}`;
}
