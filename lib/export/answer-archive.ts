import 'server-only';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fewAtATime } from './few-at-a-time';
import { fileResponse } from './file-response';

/** Answers with a zip that `write` makes, in a folder of its own that never outlives it; busy when others are at it. */
export async function answerArchive(
  name: string,
  write: (file: string) => Promise<unknown>,
  busy: string,
): Promise<Response> {
  const made = await fewAtATime(async () => {
    const folder = await mkdtemp(path.join(tmpdir(), 'pinset-save-'));
    const file = path.join(folder, 'archive.zip');
    try {
      await write(file);
    } catch (error) {
      await rm(folder, { recursive: true, force: true });
      throw error;
    }
    return file;
  });
  if (made === 'busy') {
    const headers = { 'content-type': 'text/plain; charset=utf-8', 'retry-after': '30' };
    return new Response(busy, { status: 503, headers });
  }
  return fileResponse(made, name, 'application/zip');
}
