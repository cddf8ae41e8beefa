'use client';

import type { FieldContext } from '../form/field-context';
import { checkCheck, quickCheckKinds } from './check-check';
import { ChoiceTiles } from './choice-tiles';
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
      <ChoiceTiles
        name="kind"
        label={words.fields.kind}
        tiles={quickCheckKinds.map((value) => ({ value, label: label[value] }))}
        context={context}
      />
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
