import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { fewAtATime } from '../few-at-a-time';
import { fileResponse } from '../file-response';
import { filterInName } from './file-name';
import { type SavedFormat, saveTable } from './save-table';
import type { SavedQuery } from './saved-table';
import type { SavedTableName } from './saved-tables';
import { mostXlsxRows } from './write-xlsx';
import type { WrittenWords } from './written-words';

const types = {
  csv: 'text/csv; charset=utf-8',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
} as const;

type Asked = { readonly name: SavedTableName; readonly format: SavedFormat; readonly query: SavedQuery };

function told(status: number, text: string, more: Record<string, string> = {}): Response {
  const headers = { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store', ...more };
  return new Response(text, { status, headers });
}

/** Answers with the rows of a list as a file; its name tells filter and count. */
export async function answerSavedTable(
  actor: Actor,
  { name, format, query }: Asked,
  words: WrittenWords,
  say: (key: 'busy' | 'tooLong', values: Record<string, number>) => string,
): Promise<Response> {
  const saved = await fewAtATime(() => saveTable(actor, name, query, format, words));
  if (saved === 'busy') return told(503, say('busy', {}), { 'retry-after': '10' });
  if (saved.kind === 'too-long') return told(413, say('tooLong', { most: mostXlsxRows }));
  const filter = await readAs(actor, (context) => filterInName(context, query));
  const parts = [name, ...(filter === '' ? [] : [filter]), `${saved.rows}-rows.${format}`];
  return fileResponse(saved.file, parts.join('_'), types[format]);
}
