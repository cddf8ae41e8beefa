'use client';

import { useEffect, useState } from 'react';
import { type FieldContext, textOf } from '../form/field-context';
import { checkHarvest, massAt } from './check-harvest';
import { FlushBox, proposedFlush } from './flush-box';
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
  useEffect(() => setTare((now) => now ?? rememberedTare()), []);
  const entry = useQuickEntry(props, {
    check: checkHarvest,
    firstField: 'fresh',
    onKept: (typed) => rememberTare(massAt(typed, 'tare')),
  });
  const fields = (context: FieldContext, today: string) => {
    const crate = tare ?? {
      text: textOf(context, 'tare'),
      unit: textOf(context, 'tare__unit') || snapshot.person.massUnit,
    };
    const day = dayAt(entry.typed, 'weighedOn') || today;
    return (
      <>
        <div>
          <MassBox entry={entry} props={props} context={context} tare={crate} />
          <TareBox props={props} context={context} tare={crate} change={setTare} />
        </div>
        <FlushBox
          key={entry.batchId}
          proposed={proposedFlush(entry.batch, day)}
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
        <p>
          <a
            className="tap"
            href={entry.batchId ? `/weighings/new?batch=${entry.batchId}` : '/weighings/new'}
          >
            {words.harvest.more}
          </a>
        </p>
      }
    >
      {fields}
    </QuickEntry>
  );
}
