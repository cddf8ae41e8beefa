import 'server-only';
import { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { actorInNetwork } from '@/lib/access/actor-in-network';
import { parseInput } from '@/lib/access/parse-input';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import type { Signed } from '@/lib/access/session-lookup';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, type Result } from '@/lib/base/result';
import { getBatchStanding } from '@/lib/records/batch/get-batch-standing.query';
import { entryInput } from '@/lib/records/entry/entry.input';
import { addPhoto } from '@/lib/records/photo/add-photo.command';
import { addPhotoInput, mostPhotoMegabytes } from '@/lib/records/photo/photo.input';
import { outsideStore, storedName } from '@/lib/records/photo/photo-store';
import { preparePhoto } from '@/lib/records/photo/prepare-photo';

/** An entry whose picture comes beside it. */
const photoEntry = entryInput.extend({ kind: z.literal('photo') });

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
  // Drawn and stored before the transaction, which should wait for neither; and stored only for who may see the batch.
  const photo = await preparePhoto(new Uint8Array(await file.arrayBuffer()));
  if (photo.kind !== 'ok') return photo;
  const id = input.value.id ?? newId();
  const store = outsideStore();
  if (store) {
    if (!(await readAs(actor, (context) => getBatchStanding(context, input.value.batchId, new Date()))))
      return notFound;
    // A picture without its record is litter, a record without its picture is a loss: the picture goes first.
    await store.put(storedName(actor.networkId, id, 'full'), photo.value.image);
    await store.put(storedName(actor.networkId, id, 'small'), photo.value.thumbnail);
  }
  return writeAs(actor, { origin: offline ? 'offline' : 'form' }, (context) =>
    addPhoto(context, { ...input.value, id, photo: photo.value, outside: store !== undefined }),
  );
}

/** Takes a picture from a form or from an outbox; one that is sent again is kept once, by its id. */
export async function acceptPhoto(headers: Headers, data: FormData, signed: Signed): Promise<PhotoPost> {
  const file = data.get('file');
  if (!data.has('entry')) {
    const [id, batchId, findingId] = ['id', 'batchId', 'findingId'].map((name) => textIn(data, name));
    const raw = { id, batchId, findingId, caption: textIn(data, 'caption') };
    const of = { fromOutbox: false, batchId: batchId ?? '', findingId: findingId ?? '' };
    if (!signed.actor) return { ...of, result: { kind: 'other-account' } };
    return { ...of, result: await save(signed.actor, raw, file, false) };
  }
  const of = { fromOutbox: true, batchId: '', findingId: '' };
  const entry = parseInput(photoEntry, jsonIn(textIn(data, 'entry')));
  if (entry.kind !== 'ok' || headers.get('idempotency-key')?.toLowerCase() !== entry.value.key)
    return { ...of, result: invalid('', 'entry-unreadable') };
  const { id, personId, networkId, input } = entry.value;
  const actor =
    signed.actor?.networkId === networkId ? signed.actor : await actorInNetwork(signed.person, networkId);
  if (!actor || personId !== signed.person.personId) return { ...of, result: { kind: 'other-account' } };
  const { parentId: _parentId, ...raw } = input;
  return { ...of, result: await save(actor, { ...raw, id }, file, true) };
}
