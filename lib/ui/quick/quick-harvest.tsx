'use client';

import { useEffect, useState } from 'react';
import { type FieldContext, textOf } from '../form/field-context';
import { Caution } from '../page/caution';
import { checkHarvest, massAt } from './check-harvest';
import { dayText } from './checked-entry';
import { fillPlaces } from './fill-places';
import { FlushBox, proposedFlush } from './flush-box';
import { FoldedWhen } from './folded-when';
import { MassBox } from './mass-box';
import { QuickDay } from './quick-day';
import { QuickEntry } from './quick-entry';
import type { QuickProps } from './quick-props';
import type { TypedMass } from './read-net-mass';
import { TareBox } from './tare-box';
import { rememberedTare, rememberTare } from './tare-memory';
import { dayAt } from './typed-entry';
import { useQuickEntry } from './use-quick-entry';

/** A harvest on the scale: batch, mass, flush as proposed, today. */
export function QuickHarvest(props: QuickProps) {
  const { words, snapshot } = props;
  const [tare, setTare] = useState<TypedMass>();
  const [ownFlush, setOwnFlush] = useState<{ of: string; text: string }>();
  useEffect(() => setTare((now) => now ?? rememberedTare()), []);
  const entry = useQuickEntry(props, {
    check: checkHarvest,
    firstField: 'fresh',
    onKept: (typed) => rememberTare(massAt(typed, 'tare')),
  });
  // A flush changed by hand holds for this entry of this batch.
  const flushOf = `${entry.id} ${entry.batchId}`;
  const fields = (context: FieldContext, today: string) => {
    const crate = tare ?? {
      text: textOf(context, 'tare'),
      unit: textOf(context, 'tare__unit') || snapshot.person.massUnit,
    };
    const day = dayAt(entry.typed, 'weighedOn') || today;
    const proposed = proposedFlush(entry.batch, day);
    const own = ownFlush?.of === flushOf ? ownFlush.text : textOf(context, 'lines.0.flush');
    const flush = own || String(proposed ?? '');
    const summary =
      flush === ''
        ? words.when.harvestUnknown
        : fillPlaces(words.when.harvest, { flush, day: dayText(day, today, words) });
    return (
      <>
        <div>
          <MassBox entry={entry} props={props} context={context} tare={crate} />
          <TareBox props={props} context={context} tare={crate} change={setTare} />
        </div>
        <FoldedWhen summary={summary} names={['lines.0.flush', 'weighedOn']} context={context}>
          <FlushBox
            text={flush}
            change={(text) => setOwnFlush({ of: flushOf, text })}
            words={words}
            context={context}
          />
          <QuickDay
            name="weighedOn"
            label={words.fields.weighedOn}
            today={today}
            words={words}
            context={context}
          />
        </FoldedWhen>
      </>
    );
  };
  return (
    <QuickEntry
      props={props}
      kind="harvest"
      entry={entry}
      batchField="lines.0.batchId"
      dayField="weighedOn"
      words={words.harvest}
      known={['fresh', 'tare', 'lines.0.flush']}
      defaults={{}}
      after={
        <>
          <p>
            <a
              className="tap"
              href={entry.batchId ? `/weighings/new?batch=${entry.batchId}` : '/weighings/new'}
            >
              {words.harvest.more}
            </a>
          </p>
          <Caution title={words.care.title} lines={words.care.lines} />
        </>
      }
    >
      {fields}
    </QuickEntry>
  );
}
