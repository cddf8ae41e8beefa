'use client';

import { errorOf, type FieldContext, textOf } from '../form/field-context';
import { fieldId } from '../form/field-id';
import { FieldSet } from '../form/fields/field-set';
import { checkCheck, quickCheckKinds } from './check-check';
import { QuickDay } from './quick-day';
import { QuickEntry } from './quick-entry';
import type { QuickProps } from './quick-props';
import { useQuickEntry } from './use-quick-entry';

/** What is seen of a batch: colonised, pins, or all units looked at and clean. */
export function QuickCheck(props: QuickProps) {
  const { words } = props;
  const entry = useQuickEntry(props, { check: checkCheck, firstField: 'kind' });
  const label = { ...words.checkKind, all_clean: words.check.allClean };
  const fields = (context: FieldContext, today: string) => (
    <>
      <FieldSet spec={{ name: 'kind', label: words.fields.kind }} context={context}>
        <div className="tiles">
          {quickCheckKinds.map((kind, index) => (
            <label key={kind} className="choice tile">
              <input
                id={index === 0 ? fieldId('kind') : undefined}
                type="radio"
                name="kind"
                value={kind}
                defaultChecked={kind === textOf(context, 'kind')}
                aria-invalid={errorOf(context, 'kind') === undefined ? undefined : true}
              />
              <span>{label[kind]}</span>
            </label>
          ))}
        </div>
      </FieldSet>
      <QuickDay
        name="checkedOn"
        label={words.fields.checkedOn}
        today={today}
        words={words}
        context={context}
      />
    </>
  );
  return (
    <QuickEntry
      props={props}
      kind="check"
      entry={entry}
      batchField="batchId"
      dayField="checkedOn"
      words={words.check}
      known={['kind']}
      defaults={{}}
      after={
        <p>
          <a
            className="tap"
            href={entry.batchId ? `/quick/contamination?batch=${entry.batchId}` : '/quick/contamination'}
          >
            {words.check.contaminated}
          </a>
        </p>
      }
    >
      {fields}
    </QuickEntry>
  );
}
