import { currentActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getPhoto } from '@/lib/records/photo/get-photo.query';
import { outsideStore } from '@/lib/records/photo/photo-store';

const absent = () => new Response(null, { status: 404, headers: { 'cache-control': 'no-store' } });

/** The picture itself, to whoever may see its batch; `?size=small` for the one of lists. */
export async function GET(request: Request, { params }: RouteContext<'/photos/[id]'>): Promise<Response> {
  const { id } = await params;
  const actor = await currentActor();
  if (!actor || !isId(id)) return absent();
  const size = new URL(request.url).searchParams.get('size') === 'small' ? 'small' : 'full';
  const found = await readAs(actor, (context) => getPhoto(context, id, size));
  const image = found?.kind === 'outside' ? await outsideStore()?.get(found.name) : found?.image;
  if (!image) return absent();
  return new Response(image, {
    headers: {
      'content-type': 'image/jpeg',
      'content-disposition': `inline; filename="photo-${id}.jpg"`,
      // Kept by this browser for a while, and by nothing in between; a voided one is gone within minutes.
      'cache-control': 'private, max-age=300',
      vary: 'Cookie',
    },
  });
}
