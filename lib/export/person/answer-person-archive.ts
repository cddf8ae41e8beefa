import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readSnapshot } from '@/lib/access/scoped-db';
import { answerArchive } from '../answer-archive';
import { archiveName } from '../archive-name';
import { writePersonArchive } from './write-person-archive';

/** Answers with what a person takes along; `personId` is the actor's own, or that of whom a coordinator saves it for. */
export function answerPersonArchive(actor: Actor, personId: string, busy: string): Promise<Response> {
  const now = new Date();
  return answerArchive(
    archiveName('records', now, actor.networkTimeZone),
    (file) => readSnapshot(actor, (context) => writePersonArchive(context, personId, file, now)),
    busy,
  );
}
