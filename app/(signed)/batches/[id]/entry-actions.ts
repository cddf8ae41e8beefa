'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import type { Result } from '@/lib/base/result';
import { correctCheckInput, recordCheckInput } from '@/lib/records/check/check.input';
import { correctCheck } from '@/lib/records/check/correct-check.command';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { correctFinding } from '@/lib/records/finding/correct-finding.command';
import { correctFollowUp } from '@/lib/records/finding/correct-follow-up.command';
import { correctFindingInput, recordFindingInput } from '@/lib/records/finding/finding.input';
import { correctFollowUpInput, recordFollowUpInput } from '@/lib/records/finding/follow-up.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordFollowUp } from '@/lib/records/finding/record-follow-up.command';
import { correctLook } from '@/lib/records/look/correct-look.command';
import { correctLookInput } from '@/lib/records/look/correct-look.input';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { correctLoss } from '@/lib/records/loss/correct-loss.command';
import { correctLossInput, recordLossInput } from '@/lib/records/loss/loss.input';
import { recordLoss } from '@/lib/records/loss/record-loss.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

/** Back to the batch's page when it was saved, else to the form with what is wrong. */
async function answer(
  result: Result<{ batchId: string }>,
  saved: 'look' | 'finding' | 'followUp' | 'loss' | 'check' | 'correction',
  data: FormData,
): Promise<FormState> {
  if (result.kind === 'ok') redirect(`/batches/${result.value.batchId}?saved=${saved}` as Route);
  return toFormState('findings', data, result);
}

export async function recordLookAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(recordLookInput, recordLook, data), 'look', data);
}

export async function correctLookAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(correctLookInput, correctLook, data), 'correction', data);
}

export async function recordFindingAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(recordFindingInput, recordFinding, data), 'finding', data);
}

export async function correctFindingAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(correctFindingInput, correctFinding, data), 'correction', data);
}

export async function recordFollowUpAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(recordFollowUpInput, recordFollowUp, data), 'followUp', data);
}

export async function correctFollowUpAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(correctFollowUpInput, correctFollowUp, data), 'correction', data);
}

export async function recordLossAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(recordLossInput, recordLoss, data), 'loss', data);
}

export async function correctLossAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(correctLossInput, correctLoss, data), 'correction', data);
}

export async function recordCheckAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(recordCheckInput, recordCheck, data), 'check', data);
}

export async function correctCheckAction(_state: FormState, data: FormData): Promise<FormState> {
  return answer(await runForm(correctCheckInput, correctCheck, data), 'correction', data);
}
