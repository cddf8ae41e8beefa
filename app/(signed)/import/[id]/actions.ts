'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { requireActor } from '@/lib/access/current';
import type { Failure } from '@/lib/base/result';
import type { JobMode } from '@/lib/intake/table/claim-file';
import { postedLayout } from '@/lib/intake/table/posted-layout';
import { changeLayout, settlePoints } from '@/lib/intake/table/settle';
import { startJob, stopJob } from '@/lib/intake/table/start-job';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';

const pageOf = (id: string) => `/import/${encodeURIComponent(id)}` as Route;

/** Begins the work and goes back to the page, which tells how far it is. */
async function begin(data: FormData, mode: JobMode): Promise<void> {
  const actor = await requireActor('coordinator', 'member');
  const id = String(data.get('id') ?? '');
  await startJob(actor, id, mode);
  redirect(pageOf(id));
}

export async function checkAction(data: FormData): Promise<void> {
  await begin(data, 'check');
}

export async function addAction(data: FormData): Promise<void> {
  await begin(data, 'add');
}

export async function stopAction(data: FormData): Promise<void> {
  const actor = await requireActor('coordinator', 'member');
  const id = String(data.get('id') ?? '');
  await stopJob(actor, id);
  redirect(pageOf(id));
}

function refused(data: FormData, failure: Failure): Promise<FormState> {
  return toFormState('import', data, failure);
}

export async function layoutAction(id: string, _state: FormState, data: FormData): Promise<FormState> {
  const actor = await requireActor('coordinator', 'member');
  const wishes = postedLayout(data);
  if (wishes.kind !== 'ok') return refused(data, wishes);
  const result = await changeLayout(actor, id, wishes.value);
  if (result.kind !== 'ok') return refused(data, result);
  redirect(pageOf(id));
}

export async function settleAction(id: string, _state: FormState, data: FormData): Promise<FormState> {
  const actor = await requireActor('coordinator', 'member');
  const choices = [...data.entries()].flatMap(([name, key]) => {
    const index = /^texts\.(\d+)$/.exec(name)?.[1];
    const chosen = index === undefined ? null : data.get(`choices.${index}`);
    return typeof key === 'string' && typeof chosen === 'string' ? [[key, chosen] as const] : [];
  });
  const questions = data.getAll('questions').filter((code): code is string => typeof code === 'string');
  const result = await settlePoints(actor, id, Object.fromEntries(choices), questions);
  if (result.kind !== 'ok') return refused(data, result);
  const begun = await startJob(actor, id, 'check');
  if (begun.kind !== 'ok') return refused(data, begun);
  redirect(pageOf(id));
}
