import 'server-only';

const types = {
  pdf: 'application/pdf',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  zip: 'application/zip',
} as const;

/** Answers with a report as a file; nothing in between keeps it. */
export function reportFileResponse(
  content: Uint8Array<ArrayBuffer>,
  name: string,
  ending: keyof typeof types,
): Response {
  return new Response(content, {
    headers: {
      'content-type': types[ending],
      'content-length': String(content.byteLength),
      'content-disposition': `${ending === 'pdf' ? 'inline' : 'attachment'}; filename="${name}"`,
      'cache-control': 'private, no-store',
      vary: 'Cookie',
    },
  });
}

export const noSuchReport = (): Response =>
  new Response(null, { status: 404, headers: { 'cache-control': 'no-store' } });
