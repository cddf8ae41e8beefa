import 'server-only';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { readSnapshot } from '@/lib/access/scoped-db';
import { fewAtATime } from '../few-at-a-time';
import { fileResponse } from '../file-response';
import { licenceNames } from './describe-package';
import { writePackage } from './write-package';

const licenceInput = z.enum(licenceNames).catch('none');

/** Answers with the whole network, or one site of it, as one archive, made from one unchanging state of it. */
export async function answerPackage(
  actor: Actor,
  asked: { readonly licence: unknown; readonly softwareVersion: string; readonly siteId?: string },
  busy: string,
): Promise<Response> {
  const now = new Date();
  const made = await fewAtATime(async () => {
    const folder = await mkdtemp(path.join(tmpdir(), 'pinset-save-'));
    const file = path.join(folder, 'network.zip');
    const options = {
      licence: licenceInput.parse(asked.licence),
      softwareVersion: asked.softwareVersion,
      now,
      ...(asked.siteId === undefined ? {} : { siteId: asked.siteId }),
    };
    try {
      await readSnapshot(actor, (context) => writePackage(context, file, options));
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
  const plain = actor.networkName
    .normalize('NFD')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .toLowerCase();
  return fileResponse(made, `${plain}-${now.toISOString().slice(0, 10)}.zip`, 'application/zip');
}
