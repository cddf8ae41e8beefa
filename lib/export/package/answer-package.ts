import 'server-only';
import { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { readSnapshot } from '@/lib/access/scoped-db';
import { answerArchive } from '../answer-archive';
import { archiveName } from '../archive-name';
import { licenceNames } from './describe-package';
import { writePackage } from './write-package';

const licenceInput = z.enum(licenceNames).catch('none');

/** Answers with the whole network, or one site of it, as one archive, made from one unchanging state of it. */
export function answerPackage(
  actor: Actor,
  asked: { readonly licence: unknown; readonly softwareVersion: string; readonly siteId?: string },
  busy: string,
): Promise<Response> {
  const now = new Date();
  const options = {
    licence: licenceInput.parse(asked.licence),
    softwareVersion: asked.softwareVersion,
    now,
    ...(asked.siteId === undefined ? {} : { siteId: asked.siteId }),
  };
  return answerArchive(
    archiveName(actor.networkName, now, actor.networkTimeZone),
    (file) => readSnapshot(actor, (context) => writePackage(context, file, options)),
    busy,
  );
}
