'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { runForm } from '@/lib/access/run-command';
import {
  markNoticeReadInput,
  withdrawNoticeInput,
  writeNoticeInput,
} from '@/lib/records/lot-notice/lot-notice.input';
import { markNoticeRead } from '@/lib/records/lot-notice/mark-notice-read.command';
import { withdrawNotice } from '@/lib/records/lot-notice/withdraw-notice.command';
import { writeNotice } from '@/lib/records/lot-notice/write-notice.command';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { ownPath } from '@/lib/ui/history/own-path';

export async function writeNoticeAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(writeNoticeInput, writeNotice, data);
  if (result.kind === 'ok') {
    const { lotKind, lotId } = result.value;
    redirect(`/${lotKind}s/${lotId}?saved=notice` as Route);
  }
  return toFormState('notices', data, result);
}

export async function withdrawNoticeAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(withdrawNoticeInput, withdrawNotice, data);
  if (result.kind === 'ok') {
    const { lotKind, lotId } = result.value;
    redirect(`/${lotKind}s/${lotId}?saved=withdrawn` as Route);
  }
  return toFormState('notices', data, result);
}

/** Whatever became of it, the page that comes shows whether the notice is still unread. */
export async function markNoticeReadAction(data: FormData): Promise<void> {
  await runForm(markNoticeReadInput, markNoticeRead, data);
  redirect(ownPath(data.get('back')) as Route);
}
