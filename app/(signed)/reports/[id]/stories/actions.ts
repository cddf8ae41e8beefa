'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { requireActor } from '@/lib/access/current';
import { runForm } from '@/lib/access/run-command';
import { addStory } from '@/lib/report/story/add-story.command';
import { dropStory } from '@/lib/report/story/drop-story.command';
import { addStoryInput, dropStoryInput } from '@/lib/report/story/story.input';
import { withdrawConsent } from '@/lib/report/story/withdraw-consent.command';
import { withdrawConsentInput } from '@/lib/report/story/withdraw-consent.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { loadStoryPicture } from './load-story-picture';

const storiesOf = (reportId: string) => `/reports/${reportId}/stories` as Route;

export async function addStoryAction(_state: FormState, data: FormData): Promise<FormState> {
  const image = await loadStoryPicture(await requireActor('coordinator'), data.get('photoId'));
  const result = await runForm(
    addStoryInput,
    (context, input) => addStory(context, { ...input, image }),
    data,
  );
  if (result.kind === 'ok') redirect(storiesOf(result.value.reportId));
  return toFormState('stories', data, result);
}

export async function dropStoryAction(data: FormData): Promise<void> {
  const result = await runForm(dropStoryInput, dropStory, data);
  redirect(result.kind === 'ok' ? storiesOf(result.value.reportId) : '/reports');
}

export async function withdrawConsentAction(_state: FormState, data: FormData): Promise<FormState> {
  const result = await runForm(withdrawConsentInput, withdrawConsent, data);
  if (result.kind === 'ok') redirect(storiesOf(result.value.reportId));
  return toFormState('stories', data, result);
}
