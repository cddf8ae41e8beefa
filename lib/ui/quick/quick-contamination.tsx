'use client';

import { findingActions } from '@/lib/growing/vocabulary';
import type { FieldContext } from '../form/field-context';
import { NumberField } from '../form/fields/number-field';
import { ParagraphField } from '../form/fields/paragraph-field';
import { TextField } from '../form/fields/text-field';
import { Caution } from '../page/caution';
import { checkFinding } from './check-finding';
import { dayText } from './checked-entry';
import { ChoiceTiles } from './choice-tiles';
import { fillPlaces } from './fill-places';
import { FoldedWhen } from './folded-when';
import { QuickDay } from './quick-day';
import { QuickEntry } from './quick-entry';
import type { QuickProps } from './quick-props';
import { SignTiles } from './sign-tiles';
import { proposedStage, StageChoice } from './stage-choice';
import { dayAt, textAt } from './typed-entry';
import { useQuickEntry } from './use-quick-entry';

/** Contaminated units: batch, what one sees, how many, what was done with them. */
export function QuickContamination(props: QuickProps) {
  const { words } = props;
  const { fields: labels } = words;
  const entry = useQuickEntry(props, { check: checkFinding, firstField: 'sign' });
  const when = (today: string) => {
    const typed = textAt(entry.typed, 'stage');
    const stage = typed === 'colonising' || typed === 'cropping' ? typed : proposedStage(entry.batch);
    if (stage === undefined) return words.when.findingUnknown;
    const day = dayText(dayAt(entry.typed, 'foundOn') || today, today, words);
    return fillPlaces(words.when.finding, { stage: words.stage[stage], day });
  };
  const fields = (context: FieldContext, today: string) => (
    <>
      <SignTiles props={props} context={context} />
      <NumberField
        spec={{ kind: 'whole', name: 'units', label: labels.units, hint: words.finding.unitsHint }}
        context={context}
      />
      <ChoiceTiles
        name="action"
        label={labels.action}
        tiles={findingActions.map((value) => ({ value, label: words.action[value] }))}
        context={context}
        two
      />
      <Caution title={words.caution.title} lines={words.caution.lines} />
      <FoldedWhen summary={when(today)} names={['stage', 'foundOn']} context={context}>
        <StageChoice key={entry.batchId} batch={entry.batch} words={words} context={context} />
        <QuickDay name="foundOn" label={labels.foundOn} today={today} words={words} context={context} />
      </FoldedWhen>
      <details>
        <summary>{words.finding.named}</summary>
        <div className="record-fields">
          <TextField
            spec={{
              kind: 'text',
              name: 'unitNumbers',
              label: labels.unitNumbers,
              hint: words.finding.numbersHint,
              optional: true,
              width: 'short',
            }}
            context={context}
          />
          <ParagraphField
            spec={{ kind: 'paragraph', name: 'note', label: labels.note, optional: true }}
            context={context}
          />
        </div>
      </details>
    </>
  );
  return (
    <QuickEntry
      props={props}
      kind="contamination"
      entry={entry}
      batchField="batchId"
      dayField="foundOn"
      words={words.finding}
      known={['sign', 'units', 'action', 'stage', 'unitNumbers', 'note']}
      defaults={entry.batch?.unitCount === 1 ? { units: '1' } : {}}
      after={null}
    >
      {fields}
    </QuickEntry>
  );
}
