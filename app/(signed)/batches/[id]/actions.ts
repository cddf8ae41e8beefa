'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';

/** One tap on the batch's page: looked at all units today. What one tap cannot settle is asked on the form. */
export async function lookTodayAction(data: FormData): Promise<void> {
  const batchId = String(data.get('batchId'));
  const result = await runForm(recordLookInput, recordLook, data);
  redirect(
    (result.kind === 'ok' ? `/batches/${batchId}?saved=look` : `/batches/${batchId}/looks/new`) as Route,
  );
}
