import { openApi } from '@/lib/api/document/open-api';
import { apiPath } from '@/lib/api/door/answer-request';
import { environment } from '@/lib/base/environment';

/** The document of the API; it holds nothing of anybody, so that no token is needed. */
export function GET(): Response {
  const server = `${environment().NEXTAUTH_URL.replace(/\/$/, '')}${apiPath}`;
  return Response.json(openApi(server), { headers: { 'cache-control': 'public, max-age=3600' } });
}
