/** Records by what makes two of them the same; several may share a key. */
export type KeyedRecord = { readonly key: string; readonly id: string };

/**
 * What was there before a table is taken in, by key. A row uses up one record, so that two equal rows find two equal
 * records, and a table that is taken in again adds nothing.
 */
export class KnownKeys {
  private readonly left = new Map<string, string[]>();
  private readonly loaded = new Set<string>();
  /** How many records and rows have each key: those there before, used up or not, and those that rows became. */
  private readonly known = new Map<string, number>();

  /** `usedUp`: records for which rows stand that are not taken this time. */
  constructor(private readonly usedUp: ReadonlySet<string>) {}

  /** Loads what is not loaded yet, once: what the table itself adds later is never taken for having been there. */
  async load(
    scopes: readonly string[],
    read: (scopes: readonly string[]) => Promise<readonly KeyedRecord[]>,
  ): Promise<void> {
    const missing = [...new Set(scopes)].filter((scope) => !this.loaded.has(scope));
    if (missing.length === 0) return;
    for (const scope of missing) this.loaded.add(scope);
    for (const { key, id } of await read(missing)) {
      this.claim(key);
      if (this.usedUp.has(id)) continue;
      const ids = this.left.get(key);
      if (ids) ids.push(id);
      else this.left.set(key, [id]);
    }
  }

  /** The record that a row with this key stands for already; undefined where there is none left. */
  use(key: string): string | undefined {
    return this.left.get(key)?.shift();
  }

  /** Takes a use back, of what came to nothing; the last one first. */
  giveBack(key: string, id: string): void {
    const ids = this.left.get(key);
    if (ids) ids.unshift(id);
    else this.left.set(key, [id]);
  }

  /** Whether a record like this one is there or comes of an earlier row: one more can be right, and can be a line written twice. */
  has(key: string): boolean {
    return (this.known.get(key) ?? 0) > 0;
  }

  /** Counts what a row becomes. */
  claim(key: string): void {
    this.known.set(key, (this.known.get(key) ?? 0) + 1);
  }

  /** Takes that back, of what came to nothing. */
  unclaim(key: string): void {
    this.known.set(key, (this.known.get(key) ?? 1) - 1);
  }
}
