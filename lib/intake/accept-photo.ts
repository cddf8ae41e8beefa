import 'server-only';
import { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { actorInNetwork } from '@/lib/access/actor-in-network';
import { parseInput } from '@/lib/access/parse-input';
import { writeAs } from '@/lib/access/scoped-db';
import type { Signed } from '@/lib/access/session-lookup';
import { invalid, type Result } from '@/lib/base/result';
import { addPhoto } from '@/lib/records/photo/add-photo.command';
import { addPhotoInput, mostPhotoMegabytes } from '@/lib/records/photo/photo.input';
import { preparePhoto } from '@/lib/records/photo/prepare-photo';

const photoEntry = z.object({
  id: z.uuid(),
  kind: z.literal('photo'),
  personId: z.uuid(),
  networkId: z.uuid(),
  input: z.object({ batchId: z.string(), findingId: z.string().optional(), caption: z.string().optional() }),
});

/** What came with a picture: an entry of an outbox, or the fields of a form. */
export type PhotoPost = {
  readonly fromOutbox: boolean;
  readonly batchId: string;
  readonly findingId: string;
  readonly result: Result<{ id: string; batchId: string }> | { readonly kind: 'other-account' };
};

function textIn(data: FormData, name: string): string {
  const value = data.get(name);
  return typeof value === 'string' ? value : '';
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

async function save(actor: Actor, raw: unknown, file: unknown, offline: boolean) {
  const input = parseInput(addPhotoInput, raw);
  if (input.kind !== 'ok') return input;
  if (!(file instanceof Blob)) return invalid('file', 'missing-file');
  if (file.size > mostPhotoMegabytes * 1024 * 1024)
    return invalid('file', 'file-too-large', { max: mostPhotoMegabytes });
  // Prepared before the transaction: drawing a large picture takes longer than a transaction should.
  const photo = await preparePhoto(new Uint8Array(await file.arrayBuffer()));
  if (photo.kind !== 'ok') return photo;
  return writeAs(actor, { origin: offline ? 'offline' : 'form' }, (context) =>
    addPhoto(context, { ...input.value, photo: photo.value }),
  );
}

/** Takes a picture from a form or from an outbox; one that is sent again is kept once, by its id. */
export async function acceptPhoto(data: FormData, signed: Signed): Promise<PhotoPost> {
  const file = data.get('file');
  if (!data.has('entry')) {
    const [id, batchId, findingId] = ['id', 'batchId', 'findingId'].map((name) => textIn(data, name));
    const raw = { id, batchId, findingId, caption: textIn(data, 'caption') };
    const of = { fromOutbox: false, batchId: batchId ?? '', findingId: findingId ?? '' };
    if (!signed.actor) return { ...of, result: { kind: 'other-account' } };
    return { ...of, result: await save(signed.actor, raw, file, false) };
  }
  const entry = photoEntry.safeParse(jsonIn(textIn(data, 'entry')));
  const of = { fromOutbox: true, batchId: '', findingId: '' };
  if (!entry.success) return { ...of, result: invalid('', 'entry-unreadable') };
  const { id, personId, networkId, input } = entry.data;
  const actor =
    signed.actor?.networkId === networkId ? signed.actor : await actorInNetwork(signed.person, networkId);
  if (!actor || personId !== signed.person.personId) return { ...of, result: { kind: 'other-account' } };
  return { ...of, result: await save(actor, { ...input, id }, file, true) };
}
