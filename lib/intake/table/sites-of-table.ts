import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { findReferences } from './references';
import { choiceKey, type OpenFile } from './rows-to-take';
import { textsOfRows } from './texts-of-rows';

/** The sites that the rows of a table are of, as far as they are known: its own and those that a column names. */
export async function sitesOfTable(context: ReadContext, file: OpenFile): Promise<readonly string[]> {
  const texts = (await textsOfRows(context, file, ['site'])).flatMap(([text = '']) =>
    text === '' ? [] : [text],
  );
  const find = texts.length === 0 ? undefined : await findReferences(context, 'site', texts);
  const named = texts.flatMap((text) => find?.(text) ?? file.choices[choiceKey('site', text)] ?? []);
  return [...new Set([...(file.siteId === null ? [] : [file.siteId]), ...named])];
}
