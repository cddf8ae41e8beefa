import 'server-only';
import { getLocale } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import { parseInput } from '@/lib/access/parse-input';
import { readAs } from '@/lib/access/scoped-db';
import { environment } from '@/lib/base/environment';
import { queryToObject } from '@/lib/base/form-data';
import { readerLocale } from '@/lib/base/reader-locale';
import type { FieldError } from '@/lib/base/result';
import { codeFits } from '@/lib/labels/print/code-fits';
import { labelAddress } from '@/lib/labels/sheet/label-address';
import { getLabelPrint, type LabelPrintView } from '@/lib/records/label/get-label-print.query';
import { printLabelsInput } from '@/lib/records/label/print-labels.input';
import type { FormState } from '@/lib/ui/form/field-spec';
import { problemText } from '@/lib/ui/form/problem-text';
import { dynamicWords } from '@/lib/ui/i18n/dynamic-words';

type Address = Readonly<Record<string, string | string[] | undefined>>;

/** The labels that an address asks for, and in words what is wrong with it. */
export async function loadLabelPrint(
  actor: Actor,
  address: Address,
): Promise<{ view: LabelPrintView; outline: boolean; errors: FormState['errors'] }> {
  const raw = queryToObject(address);
  const read = parseInput(printLabelsInput, raw, readerLocale(actor));
  // An address that cannot be read still shows its batches, so that the rest can be put right.
  const usual = { batch: [raw.batch ?? []].flat(), sheet: raw.sheet };
  const shown = read.kind === 'ok' ? read : parseInput(printLabelsInput, usual);
  const input = shown.kind === 'ok' ? shown.value : printLabelsInput.parse({});
  const view = await readAs(actor, (context) => getLabelPrint(context, input));
  const unread: readonly FieldError[] = read.kind === 'invalid' ? read.errors : [];
  const [batch] = view.batches;
  const longest = batch && labelAddress(environment().NEXTAUTH_URL, batch.labelKey, batch.unitCount);
  const tooFine: readonly FieldError[] =
    longest === undefined || codeFits(longest, view.sheet.layout)
      ? []
      : [{ field: 'sheet', code: 'code-too-fine' }];
  const sentence = problemText(
    { words: await dynamicWords(), locale: await getLocale(), units: actor },
    'labels',
  );
  const errors = [...unread, ...view.problems, ...tooFine];
  return {
    view,
    outline: input.outline === 'yes',
    errors: errors.map((error) => ({ field: error.field, text: sentence('errors', error) })),
  };
}
