'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { publishReport } from '@/lib/report/publish-report.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function buildReportAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(buildReportInput, buildReport, data);
  if (result.kind === 'ok') redirect(`/reports/${result.value.id}`);
  return toFormState('report', data, result);
}

export async function publishReportAction(data: FormData): Promise<void> {
  const result = await runForm(publishReportInput, publishReport, data);
  redirect((result.kind === 'ok' ? `/reports/${result.value.id}` : '/reports') as Route);
}
