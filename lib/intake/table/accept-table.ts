import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { onTheWay } from '@/lib/access/next-path';
import { fromSameOrigin } from '../from-same-origin';
import { goOnTo } from '../go-on-to';
import { serverTrouble } from '../server-trouble';
import { keepFile, mostBytes } from './keep-file';

// The file, and room for the fields and the envelope about it.
const mostBody = mostBytes + 100_000;

function back(code: string, field = 'file', kept: Readonly<Record<string, string>> = {}): string {
  return `/import?${new URLSearchParams({ problem: code, field, ...kept })}`;
}

/** Reads the posted form, keeps its file and answers with the page to go on to. */
async function take(request: Request, actor: Actor): Promise<string> {
  const data = await request.formData();
  const text = (name: string) => {
    const value = data.get(name);
    return typeof value === 'string' ? value : '';
  };
  const kept = { kind: text('kind').slice(0, 40), site: text('siteId').slice(0, 40) };
  const file = data.get('file');
  if (!(file instanceof File) || file.size === 0) return back('missing-table', 'file', kept);
  const asked = { kind: kept.kind, siteId: kept.site === '' ? null : kept.site, fileName: file.name };
  const result = await keepFile(actor, asked, new Uint8Array(await file.arrayBuffer()));
  if (result.kind === 'ok') return `/import/${result.value.id}`;
  const [first] = result.kind === 'invalid' ? result.errors : [];
  return back(first?.code ?? 'not-found', first?.field ?? 'file', kept);
}

async function pageAfter(request: Request, findActor: () => Promise<Actor | undefined>): Promise<string> {
  if (!fromSameOrigin(request.headers)) return back('other-origin');
  try {
    const actor = await findActor();
    if (!actor) return onTheWay('/sign-in', '/import');
    const length = Number(request.headers.get('content-length') ?? Number.NaN);
    if (!(length <= mostBody)) return back('table-too-large');
    if (!request.headers.get('content-type')?.startsWith('multipart/form-data')) return back('missing-table');
    return await take(request, actor);
  } catch (error) {
    serverTrouble('a table was not kept', error);
    return back('failed');
  }
}

/** Answers `POST /api/import`: always with a page to go on to, since only a form posts here. */
export async function acceptTable(
  request: Request,
  findActor: () => Promise<Actor | undefined>,
): Promise<Response> {
  return goOnTo(request, await pageAfter(request, findActor));
}
