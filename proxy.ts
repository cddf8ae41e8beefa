import { type NextRequest, NextResponse } from 'next/server';
import { askedPathHeader } from '@/lib/access/next-path';
import { contentSecurityPolicy } from '@/lib/ui/content-security-policy';

/**
 * Gives every page a script nonce and the headers that limit what a page may do, and tells it its own address, which a
 * sign-in leads back to. It decides nothing about access:
 * each page, action and route does that for itself.
 */
export function proxy(request: NextRequest): NextResponse {
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64');
  const policy = contentSecurityPolicy(nonce, process.env.NODE_ENV === 'development');
  const headers = new Headers(request.headers);
  headers.set('content-security-policy', policy);
  const { pathname, search } = request.nextUrl;
  headers.set(askedPathHeader, pathname + search);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set('content-security-policy', policy);
  return response;
}

export const config = {
  matcher: [
    {
      source: '/((?!api/|_next/static|_next/image|sw\\.js|icons/).*)',
      missing: [
        { type: 'header', key: 'next-router-prefetch' },
        { type: 'header', key: 'purpose', value: 'prefetch' },
      ],
    },
  ],
};
