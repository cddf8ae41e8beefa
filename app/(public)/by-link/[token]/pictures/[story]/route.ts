import { isId } from '@/lib/records/fields/id-field';
import { linkPicture } from '@/lib/report/link/open-link';
import { noSuchReport } from '@/lib/report/report-file-response';

/** The picture of a story of the report that a link opens; part of a visit, not one of its own. */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/by-link/[token]/pictures/[story]'>,
): Promise<Response> {
  const { token, story } = await params;
  const image = isId(story) ? await linkPicture(token, story) : undefined;
  if (!image) return noSuchReport();
  return new Response(image, {
    headers: { 'content-type': 'image/jpeg', 'cache-control': 'private, no-store' },
  });
}
