/** A state of what is kept that the reader remembers: only sites written since are asked about. Undefined: all sites are. */
export type Since = bigint | undefined;

/**
 * What a statement tells beside its sums: the state it saw, and the sites it asked about, those of which there is nothing
 * any more among them.
 */
export type StateSince = { readonly version: bigint | null; readonly written: readonly string[] | null };
