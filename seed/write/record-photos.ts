import sharp from 'sharp';
import type { Actor } from '@/lib/access/actor';
import { writeAs } from '@/lib/access/scoped-db';
import type { OpenBatch } from '@/lib/growing/open-batch';
import { addPhoto } from '@/lib/records/photo/add-photo.command';
import { preparePhoto } from '@/lib/records/photo/prepare-photo';

const sky = '#dfe7d8';
const caps = [
  [300, 210, 46],
  [360, 250, 60],
  [430, 215, 40],
] as const;

/** A drawn bag with a cluster of caps, for want of a real one: the more caps, the later in its life. */
function drawnBag(cluster: number): string {
  const grown = caps
    .slice(0, cluster)
    .map(
      ([x, y, r]) =>
        `<path d="M${x - 8} ${y}l4 70h8l4-70z" fill="#efe6d2"/><ellipse cx="${x}" cy="${y}" rx="${r}" ry="${r / 2}" fill="#a08c74"/>`,
    );
  return `<svg xmlns="http://www.w3.org/2000/svg" width="720" height="540"><rect width="720" height="540" fill="${sky}"/>
<rect x="210" y="150" width="300" height="330" rx="40" fill="#d9c48d"/><path d="M250 150l110-90 110 90z" fill="#cdb578"/>${grown.join('')}</svg>`;
}

/** Pictures of the first open batches of a site, drawn here: the demo shows no real place and no real person. */
export async function recordPhotos(member: Actor, batches: readonly OpenBatch[]): Promise<void> {
  for (const [at, { id: batchId, code }] of batches.slice(0, caps.length).entries()) {
    const photo = await preparePhoto(
      await sharp(Buffer.from(drawnBag(at + 1)))
        .png()
        .toBuffer(),
    );
    if (photo.kind !== 'ok') throw new Error(`the picture of ${code} was refused: ${JSON.stringify(photo)}`);
    const kept = await writeAs(member, { origin: 'seed' }, (context) =>
      addPhoto(context, {
        id: null,
        batchId,
        findingId: null,
        caption: null,
        photo: photo.value,
        outside: false,
      }),
    );
    if (kept.kind !== 'ok') throw new Error(`the picture of ${code} was not kept: ${JSON.stringify(kept)}`);
  }
}
