export type JsonBody =
  | { readonly kind: 'read'; readonly value: unknown }
  | { readonly kind: 'wrong-type' }
  | { readonly kind: 'too-large' }
  | { readonly kind: 'not-json' };

/** Reads a JSON body of at most so many bytes; stops at the limit whatever length the request claims to have. */
export async function readJson(request: Request, mostBytes: number): Promise<JsonBody> {
  const type = request.headers.get('content-type')?.split(';')[0]?.trim().toLowerCase();
  if (type !== 'application/json') return { kind: 'wrong-type' };
  if (Number(request.headers.get('content-length') ?? 0) > mostBytes) return { kind: 'too-large' };
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  const reader = request.body?.getReader();
  for (let part = await reader?.read(); part?.value; part = await reader?.read()) {
    bytes += part.value.byteLength;
    if (bytes > mostBytes) {
      await reader?.cancel();
      return { kind: 'too-large' };
    }
    chunks.push(part.value);
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks));
    return { kind: 'read', value: JSON.parse(text) };
  } catch {
    return { kind: 'not-json' };
  }
}
