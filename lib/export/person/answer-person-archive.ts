import 'server-only';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Actor } from '@/lib/access/actor';
import { readSnapshot } from '@/lib/access/scoped-db';
import { fewAtATime } from '../few-at-a-time';
import { fileResponse } from '../file-response';
import { writePersonArchive } from './write-person-archive';

/** Answers with what a person takes along; `personId` is the actor's own, or that of whom a coordinator saves it for. */
export async function answerPersonArchive(actor: Actor, personId: string, busy: string): Promise<Response> {
  const now = new Date();
  const made = await fewAtATime(async () => {
    const folder = await mkdtemp(path.join(tmpdir(), 'pinset-leave-'));
    const file = path.join(folder, 'records.zip');
    try {
      await readSnapshot(actor, (context) => writePersonArchive(context, personId, file, now));
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
  return fileResponse(made, `records-${now.toISOString().slice(0, 10)}.zip`, 'application/zip');
}
