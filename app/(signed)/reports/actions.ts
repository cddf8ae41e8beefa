'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { discardDraft } from '@/lib/report/discard-draft.command';
import { publishReport } from '@/lib/report/publish-report.command';
import { rebuildDraft } from '@/lib/report/rebuild-draft.command';
import { rebuildDraftInput } from '@/lib/report/rebuild-draft.input';
import { reviseReport } from '@/lib/report/revise-report.command';
import { reviseReportInput } from '@/lib/report/revise-report.input';
import { writeWords } from '@/lib/report/write-words.command';
import { writeWordsInput } from '@/lib/report/write-words.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

export async function buildReportAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(buildReportInput, buildReport, data);
  if (result.kind === 'ok') redirect(`/reports/${result.value.id}`);
  return toFormState('report', data, result);
}

export async function rebuildDraftAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(rebuildDraftInput, rebuildDraft, data);
  if (result.kind === 'ok') redirect(`/reports/${result.value.id}/rebuilt` as Route);
  return toFormState('report', data, result);
}

export async function writeWordsAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(writeWordsInput, writeWords, data);
  if (result.kind === 'ok') redirect(`/reports/${result.value.id}`);
  return toFormState('report', data, result);
}

export async function publishReportAction(data: FormData): Promise<void> {
  const result = await runForm(publishReportInput, publishReport, data);
  if (result.kind === 'ok') redirect(`/reports/${result.value.id}`);
  const id = publishReportInput.safeParse({ id: data.get('id') });
  redirect((result.kind === 'invalid' && id.success ? `/reports/${id.data.id}?late=1` : '/reports') as Route);
}

export async function reviseReportAction(data: FormData): Promise<void> {
  const result = await runForm(reviseReportInput, reviseReport, data);
  redirect((result.kind === 'ok' ? `/reports/${result.value.id}` : '/reports') as Route);
}

export async function discardDraftAction(data: FormData): Promise<void> {
  await runForm(publishReportInput, discardDraft, data);
  redirect('/reports');
}
