import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, type Result } from '@/lib/base/result';
import { addSites } from './add-sites';
import type { addSiteInput } from './site.input';

export async function addSite(
  context: WriteContext,
  input: z.output<typeof addSiteInput>,
): Promise<Result<{ id: string }>> {
  const [added] = await addSites(context, [input]);
  return added ?? notFound;
}
