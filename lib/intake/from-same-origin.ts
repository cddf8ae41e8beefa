import { environment } from '@/lib/base/environment';

/**
 * Whether a request that changes something comes from a page of this site, by what the browser itself says and no
 * page can forge: Fetch Metadata where it is sent, the Origin otherwise (OWASP cheat sheet "Cross-Site Request
 * Forgery Prevention"). Neither header, or the origin `null` of a sandboxed page, is refused.
 */
export function fromSameOrigin(headers: Headers): boolean {
  const site = headers.get('sec-fetch-site');
  if (site !== null && site !== 'same-origin') return false;
  const origin = headers.get('origin');
  if (origin === null) return site === 'same-origin';
  if (!URL.canParse(origin)) return false;
  const { host } = new URL(origin);
  return host === headers.get('host') || host === new URL(environment().NEXTAUTH_URL).host;
}
