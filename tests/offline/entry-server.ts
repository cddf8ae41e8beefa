// Serves the route of entries alone, as a process that can be killed. DATABASE_URL names the database, PEOPLE who may
// ask (the header x-test-person takes the place of the session), BUG a fault planted on purpose.
import { createServer, type IncomingMessage } from 'node:http';
import { answerEntry } from '@/app/api/entries/answer-entry';
import type { Actor } from '@/lib/access/actor';
import { writeAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { ok } from '@/lib/base/result';
import type { Entry } from '@/lib/offline/entry';
import { asDate } from '@/lib/records/fields/stored-date';
import { lateCommitMilliseconds } from './late-commit';

const people: readonly Actor[] = JSON.parse(process.env.PEOPLE ?? '[]');
const bug = process.env.BUG ?? '';

async function bodyOf(message: IncomingMessage): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of message) chunks.push(chunk);
  return Buffer.concat(chunks);
}

/**
 * What the route must never be for a look: an insert under a new id with no receipt, or an answer before the commit.
 * Undefined for what it does not spoil.
 */
async function answerBadly(body: Buffer, actor: Actor): Promise<Response | undefined> {
  const entry: Entry = JSON.parse(body.toString());
  if (entry.kind !== 'look' && entry.kind !== 'undo') return undefined;
  const { batchId, note } = entry.input;
  const insert = () =>
    writeAs(actor, { origin: 'offline' }, async ({ db }) => {
      const id = bug === 'naive' ? newId() : entry.id;
      const { siteId } = await db.batch.findFirstOrThrow({ where: { id: String(batchId) } });
      const already = bug === 'naive' ? 0 : await db.look.count({ where: { id } });
      if (already === 0)
        await db.look.create({
          data: {
            ...{ networkId: actor.networkId, id, batchId: String(batchId), siteId, note: String(note) },
            ...{ lookedOn: asDate('2026-05-10'), createdById: actor.personId },
          },
        });
      return ok(null);
    });
  const saved = { kind: 'saved', recordId: entry.id, revision: 1, savedAt: new Date().toISOString() };
  // An undo means nothing to it.
  if (entry.kind === 'undo') return Response.json(saved);
  if (bug === 'naive') await insert();
  else setTimeout(() => void insert().catch(() => undefined), lateCommitMilliseconds);
  return Response.json(saved);
}

const server = createServer((message, response) => {
  const handle = async (): Promise<Response> => {
    const body = await bodyOf(message);
    const actor = people.find(({ personId }) => personId === message.headers['x-test-person']);
    const bad = ['naive', 'ack-early'].includes(bug) && actor ? await answerBadly(body, actor) : undefined;
    if (bad) return bad;
    const headers = Object.entries(message.headers).flatMap(([name, value]) =>
      typeof value === 'string' ? [[name, value] as [string, string]] : [],
    );
    const request = new Request(`http://${message.headers.host}${message.url}`, {
      method: 'POST',
      headers,
      body: new Uint8Array(body),
    });
    return answerEntry(request, async () => (actor ? { person: actor, actor } : undefined));
  };
  handle()
    .then(async (answer) => {
      response.writeHead(answer.status, Object.fromEntries(answer.headers));
      response.end(await answer.text());
    })
    .catch(() => response.destroy());
});
server.listen(0, '127.0.0.1', () => {
  const address = server.address();
  process.send?.({ port: typeof address === 'object' ? address?.port : undefined });
});
process.on('disconnect', () => process.exit(0));
