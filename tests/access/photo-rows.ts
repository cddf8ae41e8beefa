import { z } from 'zod';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { addPhoto } from '@/lib/records/photo/add-photo.command';
import { getPhoto } from '@/lib/records/photo/get-photo.query';
import { listPhotos } from '@/lib/records/photo/list-photos.query';
import { addPhotoInput } from '@/lib/records/photo/photo.input';
import { command, type OperationRow } from './operation-rows';
import { arrange, type World } from './world';

const schema = addPhotoInput.extend({
  photo: z.object({
    image: z.instanceof(Uint8Array<ArrayBuffer>),
    thumbnail: z.instanceof(Uint8Array<ArrayBuffer>),
    widthPx: z.number(),
    heightPx: z.number(),
  }),
  outside: z.boolean(),
});

const picture = (world: World) => ({
  id: newId(),
  batchId: world.batch,
  outside: false,
  photo: { image: Uint8Array.of(1, 2), thumbnail: Uint8Array.of(1), widthPx: 4, heightPx: 3 },
});

/** Pictures: of a batch that one may see, and no other. */
export const photoRows: readonly OperationRow[] = [
  command('records/photo/add-photo.command', 'yy---', schema, addPhoto, picture),
  {
    file: 'records/photo/get-photo.query',
    may: 'yy---',
    prepare: (world) => arrange(world.people.coordinator, schema, addPhoto, picture(world)),
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) =>
        getPhoto(context, z.object({ id: z.string() }).parse(prepared).id, 'full'),
      )) !== undefined,
  },
  {
    file: 'records/photo/list-photos.query',
    may: 'yy---',
    prepare: (world) => arrange(world.people.coordinator, schema, addPhoto, picture(world)),
    attempt: async (world, actor) =>
      (await readAs(actor, (context) => listPhotos(context, world.batch))).length > 0,
  },
];
