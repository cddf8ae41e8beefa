/** So many ids in one statement; a network's largest lot asks several times. */
const mostIds = 5_000;

/** Asks for the rows of many ids, a part of the ids at a time. */
export async function inParts<Row>(
  ids: readonly string[],
  ask: (part: string[]) => Promise<readonly Row[]>,
): Promise<Row[]> {
  const rows: Row[] = [];
  for (let at = 0; at < ids.length; at += mostIds) rows.push(...(await ask(ids.slice(at, at + mostIds))));
  return rows;
}
