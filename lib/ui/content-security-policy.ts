/**
 * The policy of a page: scripts only with this response's nonce, nothing from other hosts, no frames, forms only to
 * ourselves. Styles keep 'unsafe-inline' and no nonce (a nonce would switch it off; charts use style attributes).
 * The development server evaluates strings as code, so it alone may.
 */
export function contentSecurityPolicy(nonce: string, development: boolean): string {
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${development ? " 'unsafe-eval'" : ''}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}
