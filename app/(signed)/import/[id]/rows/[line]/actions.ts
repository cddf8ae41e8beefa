'use server';

import { setTimeout } from 'node:timers/promises';
import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { notFound } from '@/lib/base/result';
import { mendRow } from '@/lib/intake/table/mend-row';
import { postedGiven } from '@/lib/intake/table/posted-layout';
import { startJob } from '@/lib/intake/table/start-job';
import { oneRow, viewFile } from '@/lib/intake/table/view-file';
import type { FormState } from '@/lib/ui/form/field-spec';
import { postedValues } from '@/lib/ui/form/posted-values';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { problemSentences } from '@/lib/ui/importing/problem-lines';

const longestWaitMs = 30_000;

/** Keeps what was mended in one row and checks it at once; what is still wrong stands beside its cell. */
export async function mendAction(
  id: string,
  line: number,
  _state: FormState,
  data: FormData,
): Promise<FormState> {
  const actor = await requireActor('coordinator', 'member');
  const view = await readAs(actor, async (context) => ({
    file: await viewFile(context, id, new Date()),
    row: await oneRow(context, id, line),
  }));
  const { file, row } = view;
  if (!file || !row) return toFormState('import', data, notFound);
  const cells = file.layout.columns.map((_, index) => {
    const posted = data.get(`cells.${index}`);
    return typeof posted === 'string' ? posted : (row.cells[index] ?? '');
  });
  const said = postedGiven(data, 'said');
  if (said.kind !== 'ok') return toFormState('import', data, said);
  const confirmed = data.getAll('questions').filter((code): code is string => typeof code === 'string');
  const mended = await mendRow(actor, id, { line, cells, said: said.value, confirmed });
  if (mended.kind !== 'ok') return toFormState('import', data, mended);
  const job = await startJob(actor, id, 'recheck');
  if (job.kind !== 'ok') return toFormState('import', data, job);
  const done = await Promise.race([job.value.finished.then(() => true), setTimeout(longestWaitMs, false)]);
  // Another table is being worked on: the page of this one tells when the row was checked.
  if (!done) redirect(`/import/${id}` as Route);
  const now = await readAs(actor, (context) => oneRow(context, id, line));
  if (!now) return toFormState('import', data, notFound);
  if (now.problems.length === 0) redirect(`/import/${id}?mended=${line}#needs` as Route);
  const sentence = await problemSentences(file);
  const columnOf = (target: string) => {
    const name = file.offers.find((offer) => offer.target === target)?.name;
    const index = file.layout.columns.findIndex(({ field }) => field === name);
    const asked = file.asked.some((one) => one.target === target);
    return name === undefined || index < 0 ? (asked ? `said.${name}` : '') : `cells.${index}`;
  };
  const wrong = now.problems.map((problem) => ({
    field: problem.asks ? 'questions' : columnOf(problem.field),
    text: sentence(problem),
  }));
  return { values: postedValues(data), errors: wrong, questions: [] };
}
