import 'server-only';
import { createReadStream } from 'node:fs';
import { rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { Readable } from 'node:stream';

/** Sends a made file and removes its folder once it is sent, or once nobody waits for it any more. */
export async function fileResponse(file: string, name: string, type: string): Promise<Response> {
  const { size } = await stat(file);
  const stream = createReadStream(file);
  stream.once('close', () => {
    rm(path.dirname(file), { recursive: true, force: true }).catch((error: Error) =>
      console.error(
        JSON.stringify({ level: 'warn', what: 'a made file was not removed', why: error.message }),
      ),
    );
  });
  return new Response(Readable.toWeb(stream) as ReadableStream, {
    headers: {
      'content-type': type,
      'content-length': String(size),
      'content-disposition': `attachment; filename="${name}"`,
      'cache-control': 'private, no-store',
      vary: 'Cookie',
    },
  });
}
