import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { ErrorSummary } from '@/lib/ui/form/error-summary';
import { fieldId } from '@/lib/ui/form/field-id';
import { fieldNames } from '@/lib/ui/form/field-names';
import type { FieldSpec, FormState } from '@/lib/ui/form/field-spec';
import { Field } from '@/lib/ui/form/fields/field';
import { RecordForm } from '@/lib/ui/form/record-form';
import { everyKind } from './every-kind';
import { formWords } from './form-words';

const names = fieldNames(everyKind).filter((name) => name !== 'token');
const failed: FormState = {
  values: {
    fresh: '1,36 kg',
    fresh__unit: 'lb',
    kept: 'b',
    seen: ['x', 'z'],
    on__quick: 'other',
    on__month: 'Feb',
  },
  errors: names.map((field) => ({ field, text: `Mend ${field}` })),
  questions: [],
};

function fields(state: FormState, specs: readonly FieldSpec[] = everyKind): string {
  const context = { values: state.values, errors: state.errors, words: formWords };
  return renderToStaticMarkup(specs.map((spec) => <Field key={spec.name} spec={spec} context={context} />));
}

describe('every kind of field', () => {
  const markup = fields(failed);

  test.each(names)('the summary’s link to %s leads to something in the form', (name) => {
    const summary = renderToStaticMarkup(
      <ErrorSummary state={failed} words={formWords} formId="form" known={names} />,
    );
    expect(summary).toContain(`href="#${fieldId(name)}"`);
    expect(markup.match(new RegExp(`id="${fieldId(name)}"`, 'g'))).toHaveLength(1);
  });

  test.each(names)('%s carries its error in words', (name) => {
    expect(markup).toContain(`Mend ${name}`);
    expect(markup).toContain(`id="${fieldId(name)}-error"`);
  });

  test('keeps what was typed, whatever it was', () => {
    expect(markup).toContain('value="1,36 kg"');
    expect(markup).toContain('<option value="lb" selected="">');
    expect(markup).toContain('<option value="b" selected="">');
    expect(markup).toContain('value="Feb"');
    expect(markup.match(/type="checkbox"[^>]* checked=""/g)).toHaveLength(2);
  });

  test('no id stands twice, and every label and description leads to something', () => {
    const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const referred = [...markup.matchAll(/ (?:for|aria-describedby)="([^"]+)"/g)].flatMap(([, list = '']) =>
      list.split(' '),
    );
    expect(referred.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('asks for no number input and forbids nothing in the browser', () => {
    expect(markup).not.toMatch(/type="number"| required|maxlength/);
    expect(markup).toContain('inputMode="decimal"');
  });

  test('a box that does not list everything leads there by a link under it, which works without script', () => {
    const [, under = ''] = markup.split('name="kept"');
    expect(under).toMatch(/<\/select><p[^>]*><a href="\/sites\/choose">Somewhere else<\/a>/);
    expect(markup.match(/Best done first\./g)).toHaveLength(1);
  });

  test('a password is never sent back', () => {
    expect(fields({ ...failed, values: { secret: 'hunter2hunter2' } })).not.toContain('hunter2');
  });

  test('a folded group opens when one of its fields failed and stays folded otherwise', () => {
    expect(markup).toMatch(/<details[^>]* open=""/);
    expect(fields({ values: {}, errors: [], questions: [] })).not.toMatch(/<details[^>]* open=""/);
  });
});

test('a form without an answer has no summary and no "Error:" in its title', () => {
  const markup = renderToStaticMarkup(
    <RecordForm
      action={async (state) => state}
      heading="Harvest from batch KTR-7"
      submitLabel="Save harvest"
      fields={everyKind}
      words={formWords}
      values={{ fresh: '2' }}
    />,
  );
  expect(markup).toContain('<title>Harvest from batch KTR-7 – Pinset</title>');
  expect(markup).not.toContain('error-summary');
  expect(markup).toContain('noValidate=""');
  expect(markup).toContain('value="2"');
});

test('the summary can take the focus where no script runs', () => {
  const summary = renderToStaticMarkup(
    <ErrorSummary state={failed} words={formWords} formId="form" known={names} />,
  );
  expect(summary).toMatch(/^<div[^>]*tabindex="-1"[^>]*autofocus=""/i);
});
