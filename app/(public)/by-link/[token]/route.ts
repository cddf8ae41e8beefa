import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { linkIsOpen } from '@/lib/report/link/open-link';
import { answerNothing } from './answer-nothing';

/**
 * Where a link leads: on to the report, or to one plain page with status 404. A handler, since a page cannot answer with
 * another status and still have a body where scripts do not run.
 */
export async function GET(
  _request: Request,
  { params }: RouteContext<'/by-link/[token]'>,
): Promise<Response> {
  const { token } = await params;
  if (!(await linkIsOpen(token))) return answerNothing();
  redirect(`/by-link/${token}/report` as Route);
}
