import { currentActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { noSuchReport } from '@/lib/report/report-file-response';
import { getStoryPicture } from '@/lib/report/story/get-story-picture.query';

/** The picture of a story, for whoever may read its report. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/reports/[id]/pictures/[story]'>,
): Promise<Response> {
  const { story } = await params;
  const actor = await currentActor();
  const image =
    actor && isId(story) ? await readAs(actor, (context) => getStoryPicture(context, story)) : undefined;
  if (!image) return noSuchReport();
  // Not kept: a withdrawn consent takes it away at once.
  return new Response(image, {
    headers: { 'content-type': 'image/jpeg', 'cache-control': 'private, no-store', vary: 'Cookie' },
  });
}
