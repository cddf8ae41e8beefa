/**
 * Goes on to a page of this site after a posted file: a browser by a redirect, a page's own script by an answer that names
 * it, since a script learns nothing of a redirect. The path is relative: behind a proxy the server does not know by
 * which name it was asked.
 */
export function goOnTo(request: Request, path: string): Response {
  const headers = { 'cache-control': 'no-store', vary: 'Accept' };
  return request.headers.get('accept') === 'application/json'
    ? Response.json({ goOnTo: path }, { headers })
    : new Response(null, { status: 303, headers: { ...headers, location: path } });
}
