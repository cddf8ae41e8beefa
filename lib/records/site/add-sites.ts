import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { addCoded } from '../fields/add-coded';
import { lotCodes } from '../fields/lot-code';
import type { Coded } from '../fields/made-before';
import type { addSiteInput } from './site.input';
import { siteDatesProblem, siteRow } from './site-row';

/** Adds several sites, as the form adds one. Their codes are always given. */
export async function addSites(
  context: WriteContext,
  inputs: readonly z.output<typeof addSiteInput>[],
): Promise<Result<Coded>[]> {
  if (context.actor.role !== 'coordinator') return inputs.map(() => notFound);
  return addCoded(context, 'site', inputs, {
    judge: (input, own) =>
      siteDatesProblem(input) ?? ok((code: string) => ({ ...own, ...siteRow(input), code })),
    draw: lotCodes('SITE'),
  });
}
