import type { NextConfig } from 'next';

/** What every answer carries. The policy for scripts needs a nonce per answer and is set in proxy.ts. */
const headers = [
  { key: 'Strict-Transport-Security', value: 'max-age=63072000' },
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'X-Frame-Options', value: 'DENY' },
  { key: 'Referrer-Policy', value: 'same-origin' },
  { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
  { key: 'Permissions-Policy', value: 'camera=(), microphone=(), geolocation=()' },
];

/** Answers of the interface for programs are data and never a page. */
const dataPolicy = { key: 'Content-Security-Policy', value: "default-src 'none'; frame-ancestors 'none'" };

const letters = ['./node_modules/@expo-google-fonts/atkinson-hyperlegible-next/{400Regular,700Bold}/*.ttf'];

/** A link to a report is a key: it is not handed on to other sites, and no search engine keeps what it opens. */
const linkHeaders = [
  { key: 'Referrer-Policy', value: 'no-referrer' },
  { key: 'X-Robots-Tag', value: 'noindex, nofollow' },
];

export default {
  output: 'standalone',
  outputFileTracingRoot: import.meta.dirname,
  typedRoutes: true,
  poweredByHeader: false,
  serverExternalPackages: ['pg', '@node-rs/argon2', 'pdfkit'],
  // Read at run time, from the folder the server runs in.
  outputFileTracingIncludes: {
    '/labels/pdf': letters,
    '/reports/[id]/pdf': letters,
    '/by-link/[token]/pdf': letters,
  },
  turbopack: {
    root: import.meta.dirname,
    resolveAlias: {
      'next-intl/config': './lib/ui/i18n/request.ts',
      'use-intl/format-message': './lib/ui/i18n/format-message.ts',
    },
  },
  experimental: {
    // A megabyte pasted into a field is answered by the form, which can say which field; not by the server.
    serverActions: { bodySizeLimit: '4mb' },
  },
  rewrites: async () => [
    // The code of a label is in capitals, which need fewer modules.
    { source: '/B/:at*', destination: '/b/:at*' },
    // A browser asks here wherever a page names no icon: files, answers of the API, a page whose head is just changing.
    { source: '/favicon.ico', destination: '/icons/mark.svg' },
  ],
  headers: async () => [
    { source: '/:path*', headers },
    { source: '/api/:path*', headers: [dataPolicy] },
    { source: '/by-link/:path*', headers: linkHeaders },
  ],
} satisfies NextConfig;
