/** What one label says, in the reader's words. */
export type LabelText = {
  /** The batch code, which people read aloud. */
  readonly code: string;
  /** Which unit, such as "Bag 12 of 24"; absent on the label of a whole batch. */
  readonly unit?: string;
  /** Written as the first of these that the typeface has all letters for. */
  readonly species: readonly [string, ...string[]];
  readonly site: readonly [string, ...string[]];
  readonly date: string;
  /** Where the printed code leads. */
  readonly address: string;
};

/** The first of several ways to write something that can be written; the last stands in when none can. */
export function firstWritable(
  ways: readonly [string, ...string[]],
  canWrite: (text: string) => boolean,
): string {
  return ways.find(canWrite) ?? ways.at(-1) ?? ways[0];
}
